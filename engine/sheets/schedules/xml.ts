/** What XML 1.0 has no way to write: control characters, and halves of surrogate pairs. */
const UNWRITABLE = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\r': '&#13;',
}

/** Text for an element or an attribute in double quotes; what XML cannot hold becomes the replacement character. */
export const xmlText = (value: string): string =>
  value.replace(UNWRITABLE, '\ufffd').replace(/[&<>"\r]/g, (sign) => ENTITIES[sign]!)

export const XML_HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
