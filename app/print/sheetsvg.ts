import { printable, type Sheet } from '../../engine'
import { type Shape, shapeOf } from '../symbols/shape'
import { type Colouring, inkColour } from './inks'

/** A sheet as a stand-alone SVG in millimetres, its text as text. The typeface is named, not carried. */
export function sheetSvg(sheet: Sheet, colouring: Colouring = 'colour'): string {
  const { w, h, title } = sheet
  const shapes = sheet.marks.map((mark) => elementOf(shapeOf(mark, (ink) => inkColour(ink, colouring))))
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}" font-family="IBM Plex Sans Condensed, sans-serif" font-kerning="none">`,
    `<title>${escaped(printable(title))}</title>`,
    `<rect width="${w}" height="${h}" fill="${inkColour('paper', colouring)}"/>`,
    ...shapes,
    '</svg>',
    '',
  ].join('\n')
}

function elementOf({ tag, attrs, text }: Shape): string {
  const written = Object.entries(attrs)
    .map(([key, value]) => `${nameIn(key)}="${escaped(String(value))}"`)
    .join(' ')
  return text === undefined ? `<${tag} ${written}/>` : `<${tag} ${written}>${escaped(text)}</${tag}>`
}

/** As SVG spells what React calls by one word. */
const nameIn = (key: string): string =>
  key === 'xmlSpace' ? 'xml:space' : key.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`)

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c]!)
