import { create } from 'zustand'
import { SCHEDULES } from '../../../engine'
import type { Order } from './order'

/** How the schedules are looked at; it stays when one goes to the drawing and comes back. */
export const useLooking = create<{
  readonly schedule: string
  readonly filter: string
  readonly order: Order
  /** Key of the chosen row. */
  readonly row: string | null
  /** Article numbers, prices and weights are being entered. */
  readonly entering: boolean
}>(() => ({ schedule: SCHEDULES[0]!.key, filter: '', order: null, row: null, entering: false }))

export const look = useLooking.setState

export const chooseSchedule = (schedule: string): void =>
  look({ schedule, order: null, row: null, entering: false })
