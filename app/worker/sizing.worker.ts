import { type Design, type Sizing, type SizingScope, sizeIt } from '../../engine'
import { serve } from './serve'

export interface SizingWish {
  readonly design: Design
  readonly scope: SizingScope
}

serve<SizingWish, Sizing>(({ design, scope }) => sizeIt(design, scope))
