import { missingIn, missingWords } from './missing'
import type { Schedule } from './schedule'
import { textSheet, worksheet } from './worksheet'
import { XML_HEAD, xmlText } from './xml'

/** One file of the package that a workbook is. */
export interface WorkbookPart {
  readonly path: string
  readonly text: string
}

/**
 * The files of a workbook (ECMA-376) with one sheet for each schedule and one for notes; zipped, in this order, they
 * are an XLSX file. Nothing in it is a formula, a link or a macro.
 */
export function workbookParts(schedules: readonly Schedule[]): readonly WorkbookPart[] {
  const notes = schedules.flatMap((s) =>
    [...s.notes, ...missingIn(s).map(missingWords)].map((note) => `${s.title}: ${note}`),
  )
  const sheets = [
    ...schedules.map((s) => ({ name: s.title, xml: worksheet(s) })),
    { name: 'Notes', xml: textSheet('Notes', notes) },
  ]
  const ids = sheets.map((_, i) => i + 1)
  return [
    { path: '[Content_Types].xml', text: contentTypes(ids) },
    { path: '_rels/.rels', text: relations([[1, 'officeDocument', 'xl/workbook.xml']]) },
    {
      path: 'xl/workbook.xml',
      text: `${XML_HEAD}<workbook xmlns="${MAIN}" xmlns:r="${REL}"><sheets>${sheets.map(({ name }, i) => `<sheet name="${xmlText(sheetName(name))}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`).join('')}</sheets></workbook>`,
    },
    {
      path: 'xl/_rels/workbook.xml.rels',
      text: relations([
        ...ids.map((i) => [i, 'worksheet', `worksheets/sheet${i}.xml`] as const),
        [ids.length + 1, 'styles', 'styles.xml'],
      ]),
    },
    { path: 'xl/styles.xml', text: STYLES },
    ...sheets.map(({ xml }, i) => ({ path: `xl/worksheets/sheet${i + 1}.xml`, text: xml })),
  ]
}

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main'
const REL = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006'
const TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml'

/** Cell formats in the order of `STYLE`. */
const STYLES = `${XML_HEAD}<styleSheet xmlns="${MAIN}"><numFmts count="1"><numFmt numFmtId="164" formatCode="0.0"/></numFmts><fonts count="2"><font><sz val="11"/></font><font><b/><sz val="11"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="5"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="0" fontId="1" fillId="0" borderId="0" xfId="0" applyFont="1"/><xf numFmtId="49" fontId="0" fillId="0" borderId="0" xfId="0" quotePrefix="1" applyNumberFormat="1"/><xf numFmtId="164" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/><xf numFmtId="2" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`

const contentTypes = (ids: readonly number[]): string =>
  `${XML_HEAD}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPE}.sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="${TYPE}.styles+xml"/>${ids.map((i) => `<Override PartName="/xl/worksheets/sheet${i}.xml" ContentType="${TYPE}.worksheet+xml"/>`).join('')}</Types>`

const relations = (list: readonly (readonly [id: number, type: string, target: string])[]): string =>
  `${XML_HEAD}<Relationships xmlns="${PACKAGE}/relationships">${list.map(([id, type, target]) => `<Relationship Id="rId${id}" Type="${REL}/${type}" Target="${target}"/>`).join('')}</Relationships>`

/** Sheet names hold 31 characters and none of these: \ / ? * [ ] : */
const sheetName = (name: string): string => name.replace(/[\\/?*[\]:]/g, ' ').slice(0, 31)
