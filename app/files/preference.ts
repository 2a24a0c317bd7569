/** Small things about this browser, not about a design: kept as text, and never needed. */
export const readPreference = (key: string): string | null => {
  try {
    return localStorage.getItem(`loomwright-${key}`)
  } catch {
    return null
  }
}

export function writePreference(key: string, value: string): void {
  try {
    localStorage.setItem(`loomwright-${key}`, value)
  } catch {
    // A browser that keeps nothing still shows everything.
  }
}
