import { crc32, inflateRawSync } from 'node:zlib'

/** Reads a ZIP file by its central directory (PKWARE APPNOTE 4.3), with Node's inflate: independent of what packs it. */
export function readZip(bytes: Uint8Array): Map<string, Buffer> {
  const file = Buffer.from(bytes)
  const end = file.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1'))
  if (end < 0) throw new Error('no end of central directory')
  const count = file.readUInt16LE(end + 10)
  const found = new Map<string, Buffer>()
  let at = file.readUInt32LE(end + 16)
  for (let i = 0; i < count; i++) {
    if (file.readUInt32LE(at) !== 0x02014b50) throw new Error('no central header')
    const [method, crc, packed, size] = [10, 16, 20, 24].map((o) =>
      o === 10 ? file.readUInt16LE(at + o) : file.readUInt32LE(at + o),
    ) as [number, number, number, number]
    const [nameLength, extraLength, commentLength] = [28, 30, 32].map((o) => file.readUInt16LE(at + o)) as [
      number,
      number,
      number,
    ]
    const local = file.readUInt32LE(at + 42)
    const name = file.toString('utf8', at + 46, at + 46 + nameLength)
    const start = local + 30 + file.readUInt16LE(local + 26) + file.readUInt16LE(local + 28)
    const raw = file.subarray(start, start + packed)
    const content = method === 8 ? inflateRawSync(raw) : Buffer.from(raw)
    if (content.length !== size || crc32(content) !== crc) throw new Error(`${name} is damaged`)
    if (found.has(name)) throw new Error(`${name} stands twice`)
    found.set(name, content)
    at += 46 + nameLength + extraLength + commentLength
  }
  return found
}
