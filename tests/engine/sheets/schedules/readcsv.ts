/** A reader of RFC 4180, sign by sign, independent of what writes it: throws on what the grammar does not allow. */
export function readCsv(text: string): string[][] {
  const records: string[][] = []
  let record: string[] = []
  let i = 0
  while (i < text.length) {
    let field = ''
    if (text[i] === '"') {
      for (i++; ; i++) {
        if (i >= text.length) throw new Error('quote is not closed')
        if (text[i] !== '"') field += text[i]
        else if (text[i + 1] === '"') {
          field += '"'
          i++
        } else break
      }
      i++
    } else
      while (i < text.length && text[i] !== ',' && text[i] !== '\r') {
        if (text[i] === '"' || text[i] === '\n') throw new Error(`stray sign at ${i}`)
        field += text[i++]
      }
    record.push(field)
    if (text[i] === ',') i++
    else if (text[i] === '\r' && text[i + 1] === '\n') {
      records.push(record)
      record = []
      i += 2
    } else throw new Error(`a record does not end well at ${i}`)
  }
  if (record.length > 0) throw new Error('the last record is not ended')
  return records
}
