import type { Stamp } from '../../../engine'
import { readPreference, writePreference } from '../../files/preference'

let unkept: string | null = null

/** Permanent id of this browser, so that records of two devices are told apart. */
export function deviceId(): string {
  const kept = readPreference('device') ?? unkept
  if (kept) return kept
  const made = crypto.randomUUID().slice(0, 8)
  unkept = made
  writePreference('device', made)
  return made
}

/** Now, on this device. */
export const stampNow = (): Stamp => ({ at: new Date().toISOString(), by: deviceId() })
