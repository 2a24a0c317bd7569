import { describe, expect, it } from 'vitest'
import { xlsxOf } from '../../../app/print/xlsx'
import { analyse, cellText, headed, type Schedule, schedulesOf } from '../../../engine/index'
import { benchDesign } from '../../engine/sheets/schedules/bench'
import { childrenNamed, type Element, readXml, textOf } from '../../engine/sheets/schedules/xmltree'
import { DEMOS } from '../../scenarios/demos/all'
import { readZip } from './readzip'

interface Cell {
  readonly value: string | number
  readonly style: number
}

/** Sheets by name, each cell by its place, by way of the relations as a spreadsheet finds them (ECMA-376 parts 1 and 2). */
function readXlsx(bytes: Uint8Array): Map<string, Map<string, Cell>> {
  const files = readZip(bytes)
  const xml = (path: string): Element => {
    const content = files.get(path)
    if (!content) throw new Error(`no file ${path}`)
    return readXml(content.toString('utf8'))
  }
  const targets = (path: string) =>
    new Map(
      childrenNamed(xml(path), 'Relationship').map((r) => [r.attributes.Id!, r.attributes.Target!] as const),
    )
  const types = new Set(
    childrenNamed(xml('[Content_Types].xml'), 'Override').map((o) => o.attributes.PartName),
  )
  const [root] = targets('_rels/.rels').values()
  const sheets = targets('xl/_rels/workbook.xml.rels')
  const list = childrenNamed(childrenNamed(xml(root!), 'sheets')[0]!, 'sheet')
  return new Map(
    list.map((sheet) => {
      const path = `xl/${sheets.get(sheet.attributes['r:id']!)}`
      if (!types.has(`/${path}`)) throw new Error(`${path} has no content type`)
      return [sheet.attributes.name!, cellsOf(xml(path))] as const
    }),
  )
}

function cellsOf(sheet: Element): Map<string, Cell> {
  const rows = childrenNamed(childrenNamed(sheet, 'sheetData')[0]!, 'row')
  return new Map(
    rows.flatMap((row) =>
      childrenNamed(row, 'c').map((c): [string, Cell] => {
        if (childrenNamed(c, 'f').length > 0) throw new Error('a formula')
        const style = Number(c.attributes.s)
        if (c.attributes.t === 'inlineStr') return [c.attributes.r!, { value: textOf(c), style }]
        return [c.attributes.r!, { value: Number(textOf(childrenNamed(c, 'v')[0]!)), style }]
      }),
    ),
  )
}

/** Letters of a column from 0, worked out apart from the writer; 26 columns are enough here. */
const place = (column: number, row: number): string => `${'ABCDEFGHIJKLMNOPQRSTUVWXYZ'[column]}${row}`

describe('XLSX', () => {
  for (const { file, make } of DEMOS)
    it(`${file}: has every schedule, cell by cell, figures as figures`, () => {
      const design = make()
      const schedules = schedulesOf(design, analyse(design).answers)
      const sheets = readXlsx(xlsxOf(schedules))
      expect([...sheets.keys()]).toEqual([...schedules.map((s) => s.title), 'Notes'])
      for (const s of schedules) {
        const cells = sheets.get(s.title)!
        s.columns.forEach((c, k) => {
          expect(cells.get(place(k, 1))?.value).toBe(headed(c))
          s.rows.forEach((row, i) => {
            const cell = row.cells[c.key]!
            const shown = typeof cell === 'number' ? cell : cellText(cell, c)
            expect(cells.get(place(k, i + 2))?.value ?? '').toBe(shown)
          })
        })
      }
    })

  it('marks text that looks like a formula, so that it stays text when it is edited', () => {
    const [conductors] = schedulesOf(benchDesign(), analyse(benchDesign()).answers)
    const cells = [
      ...readXlsx(xlsxOf([conductors!]))
        .get('Conductors')!
        .values(),
    ]
    expect(cells.filter((c) => c.value === '=1+1')).toEqual([{ value: '=1+1', style: 2 }])
    const styles = readXml(
      readZip(xlsxOf([conductors!]))
        .get('xl/styles.xml')!
        .toString('utf8'),
    )
    const formats = childrenNamed(childrenNamed(styles, 'cellXfs')[0]!, 'xf')
    expect(formats[2]!.attributes.quotePrefix).toBe('1')
    expect(formats.every((f, i) => i === 2 || f.attributes.quotePrefix === undefined)).toBe(true)
  })

  it('holds text that XML is touchy about', () => {
    const nasty = 'a<b>&"c" ]]> \u0000\u0007 \ud800 \u{1f50b} \r\n end '
    const schedule: Schedule = {
      key: 'nasty',
      title: 'Nasty: [1/2]',
      columns: [{ key: 'a', title: 'A', unit: '', align: 'start', wide: 5 }],
      rows: [{ key: '1', name: '1', cells: { a: nasty }, parts: [], conductors: [] }],
      notes: [],
    }
    const sheets = readXlsx(xlsxOf([schedule]))
    expect([...sheets.keys()][0]).toBe('Nasty   1 2 ')
    expect(sheets.get('Nasty   1 2 ')?.get('A2')?.value).toBe(
      'a<b>&"c" ]]> \ufffd\ufffd \ufffd \u{1f50b} \r\n end ',
    )
  })

  it('is the same to the byte when made again', () => {
    const make = () => xlsxOf(schedulesOf(benchDesign(), analyse(benchDesign()).answers))
    expect(Buffer.from(make()).equals(Buffer.from(make()))).toBe(true)
  })
})
