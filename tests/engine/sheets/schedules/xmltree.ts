/** A reader of plain XML, independent of what writes it: throws on what is not well formed. No DTD, no CDATA. */
export interface Element {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: readonly (Element | string)[]
}

export function readXml(source: string): Element {
  let at = 0
  const fail = (what: string): never => {
    throw new Error(`${what} at ${at}: ${source.slice(at, at + 40)}`)
  }
  const take = (pattern: RegExp): RegExpExecArray | null => {
    const sticky = new RegExp(pattern.source, 'y')
    sticky.lastIndex = at
    const found = sticky.exec(source)
    if (found) at += found[0].length
    return found
  }
  const element = (): Element => {
    const name = (take(/<([A-Za-z_][\w:.-]*)/) ?? fail('no element'))[1]!
    const attributes: Record<string, string> = {}
    for (let a = take(/\s+([\w:.-]+)="([^"<]*)"/); a; a = take(/\s+([\w:.-]+)="([^"<]*)"/)) {
      if (a[1]! in attributes) fail(`attribute ${a[1]} stands twice`)
      attributes[a[1]!] = plain(a[2]!)
    }
    if (take(/\s*\/>/)) return { name, attributes, children: [] }
    if (!take(/\s*>/)) fail('tag is not closed')
    const children: (Element | string)[] = []
    for (;;) {
      const words = take(/[^<]+/)
      if (words) children.push(plain(words[0]))
      if (take(new RegExp(`</${name}>`))) return { name, attributes, children }
      children.push(element())
    }
  }
  if (!take(/<\?xml [^?]*\?>\s*/)) fail('no XML declaration')
  const root = element()
  if (source.slice(at).trim() !== '') fail('more than one root')
  return root
}

const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }

function plain(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/.test(text))
    throw new Error('unwritable character')
  return text.replace(/&([^;]*);?/g, (all, name: string) => {
    const code = /^#(\d+)$/.exec(name)
    const sign = code ? String.fromCodePoint(Number(code[1])) : NAMED[name]
    if (sign === undefined) throw new Error(`entity ${all}`)
    return sign
  })
}

export const childrenNamed = ({ children }: Element, name: string): Element[] =>
  children.filter((c): c is Element => typeof c !== 'string' && c.name === name)

/** All text inside, in order. */
export const textOf = ({ children }: Element): string =>
  children.map((c) => (typeof c === 'string' ? c : textOf(c))).join('')
