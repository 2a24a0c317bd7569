/** A function of an object whose answer is worked out once and kept as long as the object lives. Only for pure functions. */
export function remembering<K extends object, V>(work: (of: K) => V): (of: K) => V {
  const known = new WeakMap<K, { readonly answer: V }>()
  return (of) => {
    const before = known.get(of)
    if (before) return before.answer
    const answer = work(of)
    known.set(of, { answer })
    return answer
  }
}
