/**
 * One tab at a time may write a design. The lock is held until the tab closes, is killed, or opens another design;
 * the browser frees it by itself.
 */
let release: (() => void) | null = null

/** True: this tab now holds the design. False: another tab does. */
export async function takeDesign(id: string): Promise<boolean> {
  release?.()
  release = null
  if (!navigator.locks) return true
  return new Promise((resolve) => {
    navigator.locks
      .request(`loomwright:${id}`, { ifAvailable: true }, (lock) => {
        resolve(lock !== null)
        if (!lock) return
        return new Promise<void>((free) => {
          release = free
        })
      })
      .catch(() => resolve(true))
  })
}
