import type { InViews } from './design'

/** What each view has of its own, changed alike. */
export const inEachView = <T>(own: InViews<T>, change: (of: T) => T): InViews<T> => ({
  ...own,
  ...(own['both-poles'] === undefined ? {} : { 'both-poles': change(own['both-poles']) }),
  ...(own.data === undefined ? {} : { data: change(own.data) }),
})

/** The same without what one view has of its own; undefined: no view has any more. */
export function withoutView<T>(own: InViews<T> | undefined, view: keyof InViews<T>): InViews<T> | undefined {
  if (own === undefined) return undefined
  const { [view]: _gone, ...rest } = own
  return Object.keys(rest).length === 0 ? undefined : (rest as InViews<T>)
}
