import { create } from 'zustand'
import { readPreference, writePreference } from '../../files/preference'
import { useOpen } from '../../store/open'
import { clearSelection, setStage, setTrying, useView } from '../../store/view'
import { STOPS } from './stops'

/** The look round: not yet offered, offered, at one of its stops, or over. */
export const useRound = create<{ readonly at: number | 'offered' | null }>(() => ({ at: null }))

const SEEN = 'round'

/** Offered once in a browser, after the cautions, on a design that has something to show. */
export function offerRound(): void {
  if (readPreference(SEEN) === null && useOpen.getState().design.parts.length > 0)
    useRound.setState({ at: 'offered' })
}

/** Goes to a stop: the table is put as the stop wants it. */
export function goTo(at: number): void {
  const stop = STOPS[at]
  if (!stop) {
    endRound()
    return
  }
  if (useView.getState().trying) setTrying(false)
  useView.setState({ lens: null, overlay: null })
  setStage('drawing')
  clearSelection()
  stop.before?.()
  useRound.setState({ at })
}

export function endRound(): void {
  writePreference(SEEN, 'seen')
  if (typeof useRound.getState().at === 'number') {
    useView.setState({ lens: null })
    clearSelection()
  }
  useRound.setState({ at: null })
}
