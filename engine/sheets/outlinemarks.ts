import { rect } from '../kinds/draw'
import type { Mark } from '../model/marks'
import { moved } from './block'
import type { SceneOutline, SceneText } from './scene'

/** An outline: thin for a zone, strong round mains, both in the long-dashed dotted line of ISO 128 for boundaries. */
export const outlineMarks = ({ zone, x, y, w, h }: SceneOutline): Mark =>
  rect(x, y, w, h, {
    dash: 'dash-dot',
    ...(zone === null ? { pen: 'strong', ink: 'mains' } : { pen: 'thin', ink: 'faint' }),
  })

/** Words where they stand. */
export const wordMarks = ({ x, y, marks }: SceneText): Mark[] => moved(marks, x, y)
