/**
 * Once visited, the built page opens without a network: a service worker made with the build keeps its files. The page
 * that is being worked on is never kept.
 */
export function keepForOffline(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return
  // A browser that keeps nothing, as in a private window, needs the network and is otherwise the same.
  navigator.serviceWorker.register('./offline.js').catch(() => {})
}
