import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Bench } from '../../../engine/model/bench'
import { mergeBench } from '../../../engine/model/benchmerge'
import { nextId } from '../../../engine/model/naming'
import { newDesign } from '../../../engine/model/newdesign'
import { writeDesign } from '../../../engine/model/write'
import { anyBench } from './benchrecords'

/** Laws of a join of replicas (a join-semilattice): mathematics, no source needed. */
describe('two records of the bench are joined', () => {
  test('in either order alike', () => {
    fc.assert(
      fc.property(anyBench, anyBench, (a, b) => {
        expect(mergeBench(a, b)).toEqual(mergeBench(b, a))
      }),
    )
  })

  test('in any grouping alike', () => {
    fc.assert(
      fc.property(anyBench, anyBench, anyBench, (a, b, c) => {
        expect(mergeBench(mergeBench(a, b), c)).toEqual(mergeBench(a, mergeBench(b, c)))
      }),
    )
  })

  test('and once more changes nothing: it is the same record', () => {
    fc.assert(
      fc.property(anyBench, anyBench, (a, b) => {
        const joined = mergeBench(a, b)
        expect(mergeBench(joined, b)).toBe(joined)
        expect(mergeBench(joined, a)).toBe(joined)
        expect(mergeBench(joined, joined)).toBe(joined)
      }),
    )
  })

  test('without loss: whatever either side recorded is there, or something later in its place', () => {
    fc.assert(
      fc.property(anyBench, anyBench, (a, b) => {
        const joined = slots(mergeBench(a, b))
        for (const [slot, entry] of [...slots(a), ...slots(b)]) {
          const kept = joined.get(slot)!
          expect(
            kept.at > entry.at || (kept.at === entry.at && (kept.by ?? '') >= (entry.by ?? '')),
            slot,
          ).toBe(true)
        }
        const known = new Set([...slots(a).values(), ...slots(b).values()])
        for (const entry of joined.values()) expect(known).toContain(entry)
      }),
    )
  })

  test('and written and read they are the same, whichever way they were joined', () => {
    const text = (bench: Bench) => writeDesign({ ...newDesign('d'), bench })
    fc.assert(
      fc.property(anyBench, anyBench, (a, b) => {
        expect(text(mergeBench(a, b))).toBe(text(mergeBench(b, a)))
        const { design, problems } = readDesign(text(mergeBench(a, b)))
        expect(problems).toEqual([])
        expect(design?.bench).toEqual(mergeBench(a, b))
      }),
    )
  })

  test('keys of a later version are kept from both sides', () => {
    const later = (key: string, value: number) =>
      ({ conductors: [{ conductor: 'c1', ticks: [], [key]: value }], [key]: value }) as Bench
    const joined = mergeBench(later('p', 1), mergeBench(later('q', 2), later('q', 3)))
    expect(joined).toEqual({ conductors: [{ conductor: 'c1', ticks: [], p: 1, q: 3 }], p: 1, q: 3 })
    expect(joined).toEqual(mergeBench(mergeBench(later('q', 3), later('p', 1)), later('q', 2)))
  })
})

interface Recorded {
  readonly at: string
  readonly by?: string
}

/** Every record by the one thing that it speaks of. */
function slots(bench: Bench): ReadonlyMap<string, Recorded> {
  return new Map<string, Recorded>([
    ...bench.conductors.flatMap((r): (readonly [string, Recorded])[] => [
      ...r.ticks.map((t) => [`${r.conductor} ${t.step}`, t] as const),
      ...(r.built ?? []).map((f) => [`${r.conductor} ${f.what} ${f.by}`, f] as const),
      ...(r.photos ?? []).map((p) => [`${r.conductor} ${p.photo}`, p] as const),
    ]),
    ...(bench.torques ?? []).map((t) => [`${t.part}/${t.terminal}`, t] as const),
    ...(bench.devices ?? []).map((d) => [d.device, d] as const),
  ])
}

describe('the record of the bench in a file', () => {
  const tick = {
    ...{ step: 'cut', done: true, number: 'W1', by: 'tablet', at: '2026-03-04T09:30:00.000Z' },
  }
  const fileWith = (bench: unknown) => JSON.stringify({ ...JSON.parse(writeDesign(newDesign('d'))), bench })

  test('a faulty record costs itself and is told with its place', () => {
    const { design, problems } = readDesign(
      fileWith({
        conductors: [
          {
            conductor: 'c1',
            ticks: [tick, { ...tick, step: 'crimped', at: 'yesterday' }, { ...tick, step: 'bent' }],
            built: [{ ...tick, what: 'lengthM', value: -1 }],
          },
          { ticks: [tick] },
          7,
        ],
        torques: [{ ...tick, part: 'p1', terminal: '+', newtonMetres: 'tight' }],
        devices: 'all',
      }),
    )
    expect(design?.bench?.conductors).toEqual([{ conductor: 'c1', ticks: [tick] }])
    expect(problems.map((p) => p.path)).toEqual([
      'bench.conductors[0].ticks[1].at',
      'bench.conductors[0].ticks[2].step',
      'bench.conductors[0].built[0].value',
      'bench.conductors[1].conductor',
      'bench.conductors[2]',
      'bench.torques[0].newtonMetres',
      'bench.devices',
    ])
  })

  test('what is no record at all is told; the design opens', () => {
    const { design, problems } = readDesign(fileWith([1]))
    expect(design).not.toHaveProperty('bench')
    expect(problems).toEqual([{ path: 'bench', expected: 'a record', found: 'a list of 1' }])
  })

  test('a picture that is no small JPEG is left out', () => {
    const photo = { ...tick, photo: 'f1' }
    const read = (jpeg: string) =>
      readDesign(fileWith({ conductors: [{ conductor: 'c1', photos: [{ ...photo, jpeg }] }] }))
    expect(read('/9j/AAAA').design?.bench?.conductors[0]?.photos).toHaveLength(1)
    for (const wrong of ['iVBORw0KGgo', '/9j/<script>', `/9j/${'A'.repeat(80_000)}`])
      expect(read(wrong).problems).toHaveLength(1)
  })

  test('of two records about one step the later counts', () => {
    const later = { ...tick, done: false, at: '2026-03-04T09:31:00.000Z' }
    const conductors = [
      { conductor: 'c1', ticks: [later, tick] },
      { conductor: 'c1', ticks: [tick] },
    ]
    expect(readDesign(fileWith({ conductors })).design?.bench?.conductors).toEqual([
      { conductor: 'c1', ticks: [later] },
    ])
  })

  test('a new conductor never gets an id that something was recorded of', () => {
    const design = { ...newDesign('d'), bench: { conductors: [{ conductor: 'c41', ticks: [] }] } }
    expect(nextId(design, 'c')).toBe('c42')
  })
})
