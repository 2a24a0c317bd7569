import { create } from 'zustand'
import { readPreference, writePreference } from '../files/preference'

type Theme = 'light' | 'dark'

export const useTheme = create<{ readonly theme: Theme }>(() => ({ theme: 'light' }))

function show(theme: Theme): void {
  document.documentElement.dataset.theme = theme
  useTheme.setState({ theme })
}

/** What was chosen in this browser, else what the system asks for. */
export function startTheme(): void {
  const kept = readPreference('theme')
  const night = window.matchMedia('(prefers-color-scheme: dark)').matches
  show(kept === 'light' || kept === 'dark' ? kept : night ? 'dark' : 'light')
}

export function toggleTheme(): void {
  const theme = useTheme.getState().theme === 'dark' ? 'light' : 'dark'
  writePreference('theme', theme)
  show(theme)
}
