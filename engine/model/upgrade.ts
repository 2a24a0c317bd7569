import { FORMAT } from './design'

/** A file as parsed, before its shape is known. */
export type RawFile = Record<string, unknown>

/** Turns a file of one format number into the next; the number itself is set by `upgrade`. */
export type UpgradeStep = (file: RawFile) => RawFile

/** One step for each format number that was ever written: `STEPS[0]` takes format 1 to 2. Never edited once released. */
export const STEPS: readonly UpgradeStep[] = []

/** Brings a file of an older format number up to date, one step after another. */
export function upgrade(file: RawFile, from: number, steps = STEPS, to = FORMAT): RawFile {
  let now = file
  for (let format = from; format < to; format++) {
    const step = steps[format - 1]
    if (!step) throw new Error(`No step leads from format ${format} to ${format + 1}`)
    now = { ...step(now), loomwright: format + 1 }
  }
  return now
}
