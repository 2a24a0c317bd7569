import { createElement, memo } from 'react'
import type { Mark } from '../../engine'
import { shapeOf } from './shape'

/** Paints marks inside an <svg> whose unit is the millimetre. */
export const Marks = memo(function Marks({ marks }: { marks: readonly Mark[] }) {
  return marks.map((mark, i) => {
    const { tag, attrs, text } = shapeOf(mark)
    // biome-ignore lint/suspicious/noArrayIndexKey: marks have no identity of their own
    return createElement(tag, { key: i, ...attrs }, text)
  })
})
