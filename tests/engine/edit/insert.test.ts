import { describe, expect, test } from 'vitest'
import { addPartEdit } from '../../../engine/edit/addpart'
import { apply } from '../../../engine/edit/apply'
import { insertEdit } from '../../../engine/edit/insert'
import type { Design } from '../../../engine/model/design'
import { design, partNamed } from '../../build'

const of = design()
  .part('battery', 'G1')
  .part('load', 'E1')
  .join('G1.+', 'E1.+', { size: '2.5mm2', lengthM: 4, colour: 'RD', remark: 'behind the lining' })
  .join('E1.-', 'G1.-', { returnOf: 'W1' })
  .build()
const feed = of.conductors[0]!

const put = (kind: string): Design | null => {
  const edit = insertEdit(of, addPartEdit(of, kind, { x: 0, y: 0 }), feed.id)
  if (!edit) return null
  const result = apply(of, edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}

describe('a part let go on a conductor', () => {
  test.each(['fuse-bolt-in', 'breaker', 'isolator', 'panel-switch'])('%s is joined at both ends', (kind) => {
    const now = put(kind)!
    const placed = now.parts.at(-1)!
    const [first, back, behind] = now.conductors
    expect(first!.from).toEqual(feed.from)
    expect([first!.to.part, behind!.from.part]).toEqual([placed.id, placed.id])
    expect(first!.to.terminal).not.toBe(behind!.from.terminal)
    expect(behind!.to).toEqual({ part: partNamed(of, 'E1').id, terminal: '+' })
    // The pair that is drawn as one line is now the piece at the load.
    expect(back!.returnOf).toBe(behind!.id)
  })

  test('both pieces keep size and colour; neither claims a length, and the remark stays with the first', () => {
    const [first, , behind] = put('fuse-bolt-in')!.conductors
    for (const piece of [first!, behind!])
      expect(piece).toMatchObject({ size: '2.5mm2', colour: 'RD', lengthM: null })
    expect([first!.remark, behind!.remark]).toEqual(['behind the lining', ''])
    expect(new Set([first!.number, behind!.number]).size).toBe(2)
  })

  test.each(['battery', 'busbar', 'shunt', 'relay', 'lamp'])('%s is not put into it', (kind) => {
    expect(put(kind)).toBeNull()
  })

  test('nothing is put into a conductor of data', () => {
    const data = design().part('shunt', 'B1').part('monitor-hub', 'K1').join('B1.data', 'K1.data1').build()
    expect(
      insertEdit(data, addPartEdit(data, 'fuse-blade', { x: 0, y: 0 }), data.conductors[0]!.id),
    ).toBeNull()
  })
})
