import type { Design } from '../model/design'
import { conductorById } from '../model/lookup'
import { ruleSetOf } from '../model/rules'
import { RULES } from '../rules/all'
import type { Finding } from '../rules/finding'
import { SOURCES, type Source, type SourceKey, type SourceStatus } from '../sources'
import type { Figured } from '../tables/figure'
import { RULE_SETS, type RuleSet } from '../tables/rulesets'
import type { Millimetres } from '../units'
import { figure } from '../words/names'
import { type FlowBlock, heading, listBlocks, paragraph, small } from './flow'

/** The rule set with its edition, and each of its figures with where it comes from. */
export function ruleSetBlocks(design: Design, findings: readonly Finding[], width: Millimetres): FlowBlock[] {
  const { settings } = design
  const set = ruleSetOf(design) ?? RULE_SETS[0]!
  const sources = new Set<string>([set.ampacity.source, ...figuresOf(set).map(([, , f]) => f.source)])
  for (const f of findings) if (f.source !== 'rule-set') sources.add(f.source)
  return [
    heading('Rule set', width),
    { ...paragraph(set.title, width, { weight: 'bold', after: 0.4 }), leads: true },
    paragraph(`${set.edition.charAt(0).toUpperCase()}${set.edition.slice(1)}. ${set.about}`, width, {
      after: 1,
    }),
    paragraph(
      `Surroundings ${settings.ambientC} °C, coldest ${settings.coldestC} °C; insulation ${set.insulationC} °C where a conductor states none. Where local codes differ, local codes prevail.`,
      width,
      { after: 2 },
    ),
    ...figuresOf(set).map(([name, value, from]) =>
      small(`${name}: ${value}${flagged(from)}`, width, { lead: '–', indent: 3 }),
    ),
    ...listBlocks(
      [small('Sources', width, { weight: 'bold' })],
      [...sources].flatMap((key) => {
        const source = sourceNamed(key)
        return source ? [small(sourceWords(source), width, { lead: '–', indent: 3 })] : []
      }),
    ),
  ]
}

const percent = (share: number): string => figure(share * 100, '%')

function figuresOf(set: RuleSet): readonly (readonly [name: string, value: string, from: Figured])[] {
  const { ampacity, deviceShare, continuousShare, nearSource, dropPercent, dropAtC, leastMm2 } = set
  const [conduit, thermal] = [set.surroundFactor('conduit'), set.surroundFactor('insulation')]
  const table: Figured = { value: 0, source: ampacity.source, confirmed: ampacity.confirmed }
  return [
    ['Current-carrying capacity', `table for ${ampacity.ambientC} °C`, table],
    ['Device, of the ampacity of what it protects, at most', percent(deviceShare.value), deviceShare],
    ['Continuous load, of the rating of a device, at most', percent(continuousShare.value), continuousShare],
    ['Current in a conduit or sheath', percent(conduit.value), conduit],
    ['Current in thermal insulation, where a conductor states it', percent(thermal.value), thermal],
    ['Ahead of the first device, at most', figure(nearSource.open.value, 'm'), nearSource.open],
    ['The same in a sheath throughout', figure(nearSource.sheathed.value, 'm'), nearSource.sheathed],
    ['Voltage drop, critical circuits', figure(dropPercent.critical.value, '%'), dropPercent.critical],
    ['Voltage drop, other circuits', figure(dropPercent.general.value, '%'), dropPercent.general],
    ['Conductor temperature for the drop', figure(dropAtC.value, '°C'), dropAtC],
    ['Least size alone', figure(leastMm2.open.value, 'mm²'), leastMm2.open],
    ['Least size in a sheath', figure(leastMm2.sheathed.value, 'mm²'), leastMm2.sheathed],
  ]
}

/** A figure that could not be confirmed is marked wherever it is printed. */
function flagged({ source, confirmed }: Figured): string {
  const { status } = SOURCES[source] as Source
  return confirmed && status !== 'from memory' ? '' : ' (FROM MEMORY, not confirmed)'
}

const STATUS: Readonly<Record<SourceStatus, string>> = {
  confirmed: 'read in the source',
  restated: 'restated in public',
  'from memory': 'FROM MEMORY, not confirmed',
  'common practice': 'common practice, no published source',
}

/** "Title, edition: how it was read."; what the title or the edition says already is not said twice. */
function sourceWords({ title, edition, status }: Source): string {
  const said = `${title}${edition === '' ? '' : `, ${edition}`}`
  const again = status === 'restated' ? /restate/.test(edition) : title.toLowerCase().startsWith(status)
  return again ? `${said}.` : `${said}: ${STATUS[status]}.`
}

const sourceNamed = (key: string): Source | undefined =>
  Object.hasOwn(SOURCES, key) ? SOURCES[key as SourceKey] : undefined

/** Every check that was made, by its permanent id. */
export const checkBlocks = (width: Millimetres): FlowBlock[] =>
  listBlocks(
    [heading('Checks made', width)],
    RULES.map((rule) => small(rule.looksFor, width, { lead: rule.id, indent: 8 })),
  )

/** Figures of the designer's own with their reasons, and the designer's notes. */
export function designerBlocks(design: Design, width: Millimetres): FlowBlock[] {
  const own = design.conductors.flatMap((c) => (c.designCurrent ? [{ id: c.id, ...c.designCurrent }] : []))
  return [
    ...(own.length === 0
      ? []
      : [
          heading('The designer’s own figures', width),
          ...own.map(({ id, amps, reason }) =>
            paragraph(`${figure(amps, 'A')}: ${reason}`, width, {
              lead: conductorById(design, id)?.number ?? id,
              indent: 14,
            }),
          ),
        ]),
  ]
}
