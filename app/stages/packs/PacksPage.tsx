import '../../theme/packs.css'
import { useEffect } from 'react'
import { useOpen } from '../../store/open'
import { Choices } from './Choices'
import { makePack, stopMaking, useMaking } from './making'
import { PageList } from './PageList'
import { Preview } from './Preview'

/** Packs for designer, workshop and customer: chosen, looked at page by page, taken away. */
export default function PacksPage() {
  const design = useOpen((s) => s.design)
  const choice = useMaking((s) => s.choice)
  // biome-ignore lint/correctness/useExhaustiveDependencies: these are what the pack is made from
  useEffect(makePack, [design, choice])
  useEffect(() => stopMaking, [])
  return (
    <main className="page packs">
      <Choices />
      <PageList />
      <Preview />
    </main>
  )
}
