import { textWidth } from '../../../engine/kinds/draw'
import type { Mark, XY } from '../../../engine/model/marks'

/** Corners of the smallest box around a mark. */
export function extent(mark: Mark): readonly XY[] {
  switch (mark.is) {
    case 'line':
      return mark.points
    case 'circle':
      return [
        [mark.at[0] - mark.r, mark.at[1] - mark.r],
        [mark.at[0] + mark.r, mark.at[1] + mark.r],
      ]
    case 'arc':
      return Array.from({ length: 33 }, (_, i) => {
        const a = ((mark.from + ((mark.to - mark.from) * i) / 32) * Math.PI) / 180
        return [mark.at[0] + mark.r * Math.cos(a), mark.at[1] + mark.r * Math.sin(a)]
      })
    case 'text': {
      const width = textWidth(mark.text, mark.height)
      const back = { start: 0, middle: width / 2, end: width }[mark.anchor ?? 'start']
      const [x, y] = mark.at
      return mark.turn === 90
        ? [
            [x - mark.height, y + back - width],
            [x, y + back],
          ]
        : [
            [x - back, y - mark.height],
            [x - back + width, y],
          ]
    }
  }
}
