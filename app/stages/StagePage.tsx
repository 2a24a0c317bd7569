import { Suspense } from 'react'
import { useView } from '../store/view'
import { STAGES } from './stages'

/** The page of the stage that is looked at. */
export function StagePage() {
  const stage = useView((s) => s.stage)
  const Page = STAGES.find((s) => s.key === stage)?.page
  if (!Page) return null
  return (
    <Suspense fallback={<main className="page waiting">Fetching the page…</main>}>
      <Page />
    </Suspense>
  )
}
