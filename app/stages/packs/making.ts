import { create } from 'zustand'
import { useOpen } from '../../store/open'
import { PackMaker } from '../../worker/packmaker'
import type { MadePack } from '../../worker/packtalk'
import { type Choice, contentsOf, keepChoice, keptChoice } from './choice'
import { optionsOf } from './labelchoice'

/** How far the pack is: `pack` is the last one that was made, and stays in sight while another is made. */
interface Making {
  readonly choice: Choice
  readonly pack: MadePack | null
  readonly work:
    | { readonly is: 'making'; readonly done: number; readonly of: number; readonly title: string }
    | { readonly is: 'stopped' }
    | { readonly is: 'failed'; readonly why: string }
    | { readonly is: 'made' }
  /** Index of the page that is looked at. */
  readonly page: number
}

export const useMaking = create<Making>(() => ({
  choice: keptChoice(),
  pack: null,
  work: { is: 'stopped' },
  page: 0,
}))

export const maker = new PackMaker((told) => {
  if (told.is === 'progress') useMaking.setState({ work: { ...told, is: 'making' } })
  else if (told.is === 'failed') useMaking.setState({ work: { is: 'failed', why: told.why } })
  else
    useMaking.setState((s) => ({
      pack: told.pack,
      work: { is: 'made' },
      page: Math.min(s.page, told.pack.pages.length - 1),
    }))
})

/** Makes the pack of the open design as chosen. */
export function makePack(): void {
  const { choice } = useMaking.getState()
  const { design } = useOpen.getState()
  const contents = contentsOf(choice)
  useMaking.setState({ work: { is: 'making', done: 0, of: contents.length, title: 'Figures and findings' } })
  maker.make({ ...choice, design, contents, labels: optionsOf(choice.labels) })
}

/** Ends the work at once. The pages that were in sight went with it. */
export function stopMaking(): void {
  maker.stop()
  useMaking.setState({ pack: null, work: { is: 'stopped' } })
}

export function choose(change: Partial<Choice>): void {
  const choice = { ...useMaking.getState().choice, ...change }
  keepChoice(choice)
  useMaking.setState({ choice })
}

export function turnTo(page: number): void {
  const last = (useMaking.getState().pack?.pages.length ?? 1) - 1
  useMaking.setState({ page: Math.max(0, Math.min(last, page)) })
}
