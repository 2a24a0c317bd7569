import type { Design } from './design'

/** What is recorded while building, testing and handing over: no part of what is designed. */
export const WORK_RECORDS = ['bench', 'commissioning', 'handover']

/** A design with the work records of another: of a state that is taken back, the work stays as it is now. */
export function withRecordsOf(design: Design, from: Design): Design {
  const entries = (of: Design, wanted: boolean) =>
    Object.entries(of).filter(([key]) => WORK_RECORDS.includes(key) === wanted)
  return Object.fromEntries([...entries(design, false), ...entries(from, true)]) as unknown as Design
}

/** What is designed alone. The same design where nothing is recorded. */
export function withoutRecords(design: Design): Design {
  const entries = Object.entries(design).filter(([key]) => !WORK_RECORDS.includes(key))
  return entries.length === Object.keys(design).length
    ? design
    : (Object.fromEntries(entries) as unknown as Design)
}
