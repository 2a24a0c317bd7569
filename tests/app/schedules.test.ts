import { describe, expect, it } from 'vitest'
import { arranged, turned } from '../../app/stages/schedules/order'
import type { Schedule, ScheduleCell } from '../../engine/index'

const COLUMN = { unit: '', align: 'start', wide: 5 } as const

const table = (rows: readonly (readonly [name: string, current: ScheduleCell])[]): Schedule => ({
  key: 'x',
  title: 'X',
  columns: [
    { ...COLUMN, key: 'no', title: 'No.' },
    { ...COLUMN, key: 'current', title: 'Current' },
  ],
  rows: rows.map(([name, current]) => ({
    key: name,
    name,
    cells: { no: name, current },
    parts: [],
    conductors: [],
  })),
  notes: [],
})

const TABLE = table([
  ['W10', 5],
  ['W2', { notKnown: 'no length' }],
  ['W1', 12],
  ['W3', ''],
  ['W4', 'unlimited'],
])

const names = (filter: string, column: string | null, down = false) =>
  arranged(TABLE, filter, column === null ? null : { column, down }).map((r) => r.name)

describe('a schedule on screen', () => {
  it('stands as in the pack until a head is pressed', () => {
    expect(names('', null)).toEqual(['W10', 'W2', 'W1', 'W3', 'W4'])
  })

  it('sorts names as people count, figures by size, and what is missing last either way', () => {
    expect(names('', 'no')).toEqual(['W1', 'W2', 'W3', 'W4', 'W10'])
    expect(names('', 'no', true)).toEqual(['W10', 'W4', 'W3', 'W2', 'W1'])
    expect(names('', 'current')).toEqual(['W10', 'W1', 'W4', 'W2', 'W3'])
    expect(names('', 'current', true)).toEqual(['W4', 'W1', 'W10', 'W2', 'W3'])
  })

  it('keeps rows that hold every word, whatever the case', () => {
    expect(names('w1', null)).toEqual(['W10', 'W1'])
    expect(names('UNLIM w4', null)).toEqual(['W4'])
    expect(names('w1 unlim', null)).toEqual([])
  })

  it('turns up, down, and back to what it was', () => {
    const up = turned(null, 'no')
    expect(up).toEqual({ column: 'no', down: false })
    expect(turned(up, 'no')).toEqual({ column: 'no', down: true })
    expect(turned(turned(up, 'no'), 'no')).toBeNull()
    expect(turned(up, 'current')).toEqual({ column: 'current', down: false })
  })
})
