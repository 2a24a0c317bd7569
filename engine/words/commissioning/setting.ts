import type { Setting, TestStep } from '../../calc/commissioning/step'
import type { Design, PartId } from '../../model/design'
import { listed, partName } from '../names'

/** How the system is set for a step, one short sentence each. */
export function settingWords({ setting, group }: TestStep, design: Design): readonly string[] {
  const named = (ids: readonly PartId[] = []): string =>
    listed(
      ids.map((id) => partName(design, id)),
      12,
    )
  if (setting.isolated)
    return [
      group === 'visual'
        ? 'Nothing is joined to a battery yet.'
        : 'Everything isolated: batteries off, fuses out, arrays covered and unplugged, mains unplugged, engine off.',
    ]
  return [
    loadsWords(setting, named),
    ...(setting.on?.length ? [`Switches on: ${named(setting.on)}; all others off.`] : []),
    ...(setting.sources?.length ? [`Giving: ${named(setting.sources)}; all other sources rest.`] : []),
    ...(setting.off?.length ? [`Taken off, fuse out or lead lifted: ${named(setting.off)}.`] : []),
  ].filter((line) => line !== '')
}

function loadsWords({ loads, without, stays }: Setting, named: (ids?: readonly PartId[]) => string): string {
  const but = stays?.length
    ? `${named(stays)} ${stays.length === 1 ? 'stays' : 'stay'} on, to show the readings.`
    : ''
  if (loads === undefined) return ''
  if (loads === 'off') return `Everything that draws is off. ${but}`.trim()
  if (loads === 'all')
    return without?.length
      ? `On: everything that draws, but ${named(without)}: together they would be too much.`
      : 'On: everything that draws.'
  return `On: ${named(loads)} alone. ${but}`.trim()
}
