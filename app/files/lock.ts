/**
 * One tab at a time may write a design. The lock is held until the tab closes, is killed, or opens another design;
 * the browser frees it by itself.
 */
let held: { readonly id: string; readonly release: () => void } | null = null
let waiting: AbortController | null = null

/** True: this tab now holds the design, or did so already. False: another tab does. */
export async function takeDesign(id: string): Promise<boolean> {
  // Letting go takes the browser a moment; asked for again at once, a lock of this tab's own would stand in the way.
  if (held?.id === id) return true
  held?.release()
  held = null
  waiting?.abort()
  waiting = null
  if (!navigator.locks) return true
  return new Promise((resolve) => {
    navigator.locks
      .request(nameOf(id), { ifAvailable: true }, (lock) => {
        resolve(lock !== null)
        if (!lock) return
        return new Promise<void>((free) => {
          held = { id, release: free }
        })
      })
      .catch(() => resolve(true))
  })
}

/** Tells once when the tab that holds a design has let go of it, unless this tab has turned to another one by then. */
export function whenFree(id: string, tell: () => void): void {
  waiting = new AbortController()
  const { signal } = waiting
  navigator.locks
    .request(nameOf(id), { signal }, () => {
      if (!signal.aborted) tell()
    })
    .catch(() => {
      // Aborted: nobody waits any more.
    })
}

const nameOf = (id: string) => `loomwright:${id}`
