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

function loadsWords({ loads, without }: Setting, named: (ids?: readonly PartId[]) => string): string {
  if (loads === undefined) return ''
  if (loads === 'off') return 'Everything that draws is off.'
  if (loads === 'all')
    return without?.length
      ? `On: everything that draws, but ${named(without)}: together they would be too much.`
      : 'On: everything that draws.'
  return `On: ${named(loads)} alone.`
}

/** What stays on whatever is tested, so that the readings can be read; empty where there is nothing. */
export function monitorWords(steps: readonly TestStep[], design: Design): string {
  const stays = [...new Set(steps.flatMap((s) => s.setting.stays ?? []))]
  if (stays.length === 0) return ''
  const who = listed(
    stays.map((id) => partName(design, id)),
    12,
  )
  return `${who} ${stays.length === 1 ? 'stays' : 'stay'} on throughout, to show the readings; what ${stays.length === 1 ? 'it takes' : 'they take'} is counted in.`
}
