/**
 * Position of the first character at which a text stops being JSON; its length where it only breaks off. Parsers
 * differ in what they tell of a fault, so the place is found here. Linear in the text.
 */
export function jsonFaultAt(text: string): number {
  /** Open brackets, innermost last: what closes them. */
  const open: ('}' | ']')[] = []
  let wants: 'value' | 'key' | 'colon' | 'comma' = 'value'
  /** Just after an opening bracket it may close again; after a comma it may not. */
  let mayClose = false
  TOKEN.lastIndex = 0
  for (;;) {
    const at = TOKEN.lastIndex
    const match = TOKEN.exec(text)
    if (!match) return at + SPACE.exec(text.slice(at, at + 1000))![0].length
    const token = match[1]!
    const start = TOKEN.lastIndex - token.length
    if (token === open.at(-1) && (wants === 'comma' || mayClose)) {
      open.pop()
      wants = 'comma'
    } else if (wants === 'value' && (token === '{' || token === '[')) {
      open.push(token === '{' ? '}' : ']')
      wants = token === '{' ? 'key' : 'value'
      mayClose = true
      continue
    } else if (wants === 'value' && !MARKS.has(token)) wants = 'comma'
    else if (wants === 'key' && token.startsWith('"')) wants = 'colon'
    else if (wants === 'colon' && token === ':') wants = 'value'
    else if (wants === 'comma' && token === ',' && open.length > 0)
      wants = open.at(-1) === '}' ? 'key' : 'value'
    else return start
    mayClose = false
  }
}

/** Blanks, then a string, a number, a word or a mark. The ranges of a string leave out quote, backslash and control characters. */
const TOKEN =
  /[ \t\r\n]*("[ !#-[\]-\uffff]*(?:\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})[ !#-[\]-\uffff]*)*"|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null|[{}[\]:,])/y
const SPACE = /^[ \t\r\n]*/
const MARKS: ReadonlySet<string> = new Set(['{', '}', '[', ']', ':', ','])
