import type { jsPDF } from 'jspdf'

/** The part of jsPDF's inside that an attachment needs; it is not in its published types. */
interface Inside {
  readonly events: { subscribe(topic: string, callback: () => void): void }
  newObject(): number
  out(text: string): void
  putStream(options: {
    readonly data: string
    readonly objectId: number
    readonly additionalKeyValues: { readonly key: string; readonly value: string }[]
  }): void
}

/** Puts a file inside the document (ISO 32000-1, 7.11.4): readers list it as an attachment. */
export function attach(pdf: jsPDF, name: string, bytes: Uint8Array, mime: string): void {
  const inside = pdf.internal as unknown as Inside
  let specification = 0
  inside.events.subscribe('postPutResources', () => {
    const file = inside.newObject()
    inside.putStream({
      data: binary(bytes),
      objectId: file,
      additionalKeyValues: [
        { key: 'Type', value: '/EmbeddedFile' },
        { key: 'Subtype', value: `/${mime.replaceAll('/', '#2F')}` },
        { key: 'Params', value: `<</Size ${bytes.length}>>` },
      ],
    })
    inside.out('endobj')
    specification = inside.newObject()
    inside.out(`<</Type /Filespec /F (${name}) /UF (${name}) /EF <</F ${file} 0 R>>>>`)
    inside.out('endobj')
  })
  inside.events.subscribe('putCatalog', () => {
    inside.out(`/Names <</EmbeddedFiles <</Names [(${name}) ${specification} 0 R]>>>>`)
  })
}

/** Bytes as jsPDF takes them: one character each. */
export function binary(bytes: Uint8Array): string {
  let text = ''
  for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192))
  return text
}
