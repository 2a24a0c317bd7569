/**
 * Every symbol on one page, upright or in a given stance, with terminals and captions, to be looked at:
 * `tsx tests/bench/symbols.ts out.html [turn] [mirrored]`.
 */
import { writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { type Shape, shapeOf } from '../../app/symbols/shape'
import type { Ink, Mark, Part } from '../../engine'
import { KINDS } from '../../engine/kinds/all'
import { boxOf, symbolOf, terminalsOf } from '../../engine/kinds/place'
import type { Turn } from '../../engine/model/design'
import type { Field, Value } from '../../engine/model/fields'
import type { Kind } from '../../engine/model/kind'
import { initialValues } from '../../engine/model/values'

const [out, turn = '0', mirrored] = process.argv.slice(2)
if (!out) throw new Error('Give the path of the page to write.')

const PX = 5
const INKS: Readonly<Record<Ink, string>> = {
  ink: '#1f262b',
  faint: '#5a5f61',
  positive: '#9c2a1c',
  negative: '#27323c',
  data: '#4a45a0',
  mains: '#6f5200',
  accent: '#0c5c66',
  danger: '#ad1038',
  warning: '#855000',
  paper: '#ffffff',
  tint: '#efe7d4',
}

/** Fields that start empty at a middling figure, so that captions show as in use. */
function sample(field: Field): Value | undefined {
  if (field.type === 'number' && field.initial === null && field.role !== 'result')
    return field.standard?.[Math.floor(field.standard.length / 2)] ?? undefined
  if (field.type !== 'rows') return undefined
  const labels = ['Fridge', 'Water pump', 'Cabin lights', 'Sockets, rear and bench', 'Fan', 'Spare']
  return Array.from({ length: field.initial }, (_, i) => ({
    ratingA: [15, 10, 7.5, 20, 3, null][i % 6]!,
    label: labels[i % 6]!,
  }))
}

function partOf(kind: Kind): Part {
  const values = { ...initialValues(kind.fields) } as Record<string, Value>
  for (const [key, field] of Object.entries(kind.fields)) values[key] = sample(field) ?? values[key]!
  return {
    id: kind.key,
    kind: kind.key,
    designation: `${kind.letter}1`,
    name: kind.title,
    location: '',
    x: 0,
    y: 0,
    turn: Number(turn) as Turn,
    mirrored: mirrored === 'mirrored',
    values,
  }
}

const KEBAB = (name: string) =>
  name === 'viewBox' ? name : name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`)
const plainText = (s: string) => s.replace(/&/g, '&amp;').replace(/</g, '&lt;')
const element = ({ tag, attrs, text }: Shape) =>
  `<${tag} ${Object.entries(attrs)
    .map(([k, v]) => `${KEBAB(k)}="${v}"`)
    .join(' ')}>${plainText(text ?? '')}</${tag}>`
const paint = (mark: Mark) => element(shapeOf(mark, (ink) => INKS[ink]))

function card(kind: Kind): string {
  const part = partOf(kind)
  const { w, h } = boxOf(part)
  const terminals = terminalsOf(part).map(
    (t) => `<circle cx="${t.x}" cy="${t.y}" r="0.45" fill="none" stroke="#c33" stroke-width="0.12"/>`,
  )
  const margin = 1
  return `<figure><svg viewBox="${-margin} ${-margin} ${w + 2 * margin} ${h + 2 * margin}" width="${(w + 2 * margin) * PX}" height="${(h + 2 * margin) * PX}">
<rect width="${w}" height="${h}" fill="none" stroke="#cde" stroke-width="0.1"/>
${symbolOf(part).marks.map(paint).join('\n')}${terminals.join('')}</svg>
<figcaption><b>${part.designation}</b> ${kind.title}<br>${kind.caption(part.values).map(plainText).join('<br>')}</figcaption></figure>`
}

const font = (weight: string, folder: string, n: number) =>
  `@font-face{font-family:Plex;font-weight:${n};src:url(file://${resolve('node_modules/@expo-google-fonts/ibm-plex-sans', folder, `IBMPlexSans_${weight}.ttf`)})}`

writeFileSync(
  out,
  `<!doctype html><meta charset="utf-8"><title>Symbols</title><style>
${font('400Regular', '400Regular', 400)}${font('600SemiBold', '600SemiBold', 600)}
body{margin:12px;font:12px Plex;display:flex;flex-wrap:wrap;gap:14px;align-items:flex-start;background:#fff}
figure{margin:0;max-width:220px}svg text{font-family:Plex}figcaption{line-height:1.3}
</style>${KINDS.map(card).join('\n')}`,
)
