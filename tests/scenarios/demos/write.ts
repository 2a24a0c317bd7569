import { mkdirSync, writeFileSync } from 'node:fs'
import { apply } from '../../../engine/edit/apply'
import { analyse, writeDesign } from '../../../engine/index'
import { arrangeEdit } from '../../../engine/sheets/arrangedesign'
import { DEMOS } from './all'

/** Writes the demo designs, arranged, and their list to public/demos. */
const folder = new URL('../../../public/demos/', import.meta.url)
mkdirSync(folder, { recursive: true })
for (const { file, make } of DEMOS) {
  const design = make()
  const result = apply(design, arrangeEdit(design, analyse(design).answers))
  if (result.refused) throw new Error(`${file}: ${result.why}`)
  writeFileSync(new URL(file, folder), writeDesign(result.design))
}
const list = DEMOS.map(({ file, title, about }) => ({ file, title, about }))
writeFileSync(new URL('index.json', folder), `${JSON.stringify(list, null, 2)}\n`)
