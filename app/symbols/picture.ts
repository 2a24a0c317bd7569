import type { Ink, Scene } from '../../engine'
import { linePath, type Shape, shapeOf } from './shape'

/** Fixed colours of pictures that leave the page: ink on warm paper, whatever the theme. */
const PICTURE: Readonly<Record<Ink, string>> = {
  ink: '#1f262b',
  faint: '#5a5f61',
  positive: '#9c2a1c',
  negative: '#27323c',
  data: '#4a45a0',
  mains: '#6f5200',
  accent: '#0c5c66',
  danger: '#ad1038',
  warning: '#855000',
  paper: '#fbf7ec',
  tint: '#efe7d4',
}

/** A whole scene as a stand-alone SVG, `widthPx` wide at most and in the given proportion. */
export function pictureOf(scene: Scene, widthPx: number, heightPx: number): string {
  const margin = 5
  const { x, y, w, h } = scene.box
  const box = `${x - margin} ${y - margin} ${w + 2 * margin} ${h + 2 * margin}`
  const colour = (ink: Ink) => PICTURE[ink]
  const lines = scene.conductors.map(
    (c) =>
      `<path d="${linePath(c.points)}" fill="none" stroke="${PICTURE[c.nature === 'other' ? 'ink' : c.nature]}" stroke-width="0.6"/>`,
  )
  const parts = scene.parts.map(
    (p) =>
      `<g transform="translate(${p.x} ${p.y})">${p.marks.map((m) => text(shapeOf(m, colour))).join('')}</g>`,
  )
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}" viewBox="${box}" font-family="sans-serif">` +
    `<rect x="${x - margin}" y="${y - margin}" width="100%" height="100%" fill="${PICTURE.paper}"/>` +
    `${lines.join('')}${parts.join('')}</svg>`
  )
}

const text = ({ tag, attrs, text: inner = '' }: Shape): string =>
  `<${tag} ${Object.entries(attrs)
    .map(
      ([k, v]) =>
        `${k === 'xmlSpace' ? 'xml:space' : k.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`)}="${xml(String(v))}"`,
    )
    .join(' ')}>${xml(inner)}</${tag}>`

const xml = (s: string): string =>
  s.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c]!)
