import fc from 'fast-check'
import { BENCH_STEPS, type Bench, type Built, type Photo, type Tick } from '../../../engine/model/bench'
import { mergeBench } from '../../../engine/model/benchmerge'

/** Random records of the bench: few conductors, devices and times, so that they often meet. */

const instant = fc.integer({ min: 0, max: 4 }).map((s) => `2026-03-04T09:30:0${s}.000Z`)
const entry = {
  at: instant,
  by: fc.constantFrom('tablet', 'phone', 'desk'),
  number: fc.constantFrom('W1', 'W2'),
}
const size = fc.constantFrom('4mm2', '6mm2')
const end = fc.record({ part: fc.constantFrom('p1', 'p2'), terminal: fc.constantFrom('+', '-') })

const tick: fc.Arbitrary<Tick> = fc.record(
  {
    ...entry,
    step: fc.constantFrom(...BENCH_STEPS),
    done: fc.boolean(),
    on: fc.record({ size, lengthM: fc.constantFrom(1, 2.5) }),
  },
  { requiredKeys: ['at', 'by', 'number', 'step', 'done'] },
)

const built: fc.Arbitrary<Built> = fc.oneof(
  fc.record({ ...entry, what: fc.constant('size' as const), value: fc.option(size) }),
  fc.record({ ...entry, what: fc.constant('lengthM' as const), value: fc.option(fc.constantFrom(1, 2.5)) }),
  fc.record({ ...entry, what: fc.constantFrom('from' as const, 'to' as const), value: fc.option(end) }),
  fc.record({
    ...entry,
    what: fc.constant('note' as const),
    value: fc.option(fc.constantFrom('longer way', 'spliced')),
    knew: instant,
  }),
)

const photo: fc.Arbitrary<Photo> = fc.record({
  ...entry,
  photo: fc.constantFrom('f1', 'f2', 'f3'),
  jpeg: fc.option(fc.constantFrom('/9j/AAAA', '/9j/BBBB')),
})

/** In the order in which the reader and every edit keep them. */
export const anyBench: fc.Arbitrary<Bench> = fc
  .record({
    conductors: fc.array(
      fc.record({
        conductor: fc.constantFrom('c1', 'c2', 'c9'),
        ticks: fc.array(tick, { maxLength: 6 }),
        built: fc.array(built, { maxLength: 5 }),
        photos: fc.array(photo, { maxLength: 3 }),
      }),
      { maxLength: 4 },
    ),
    torques: fc.array(
      fc.record({
        at: instant,
        by: entry.by,
        part: fc.constantFrom('p1', 'p2'),
        terminal: fc.constantFrom('+', '-'),
        newtonMetres: fc.option(fc.constantFrom(6, 8)),
      }),
      { maxLength: 3 },
    ),
    devices: fc.array(
      fc.record({ device: entry.by, name: fc.constantFrom('Bench tablet', 'Phone'), at: instant }),
      { maxLength: 2 },
    ),
  })
  .map((bench) => mergeBench(undefined, bench))
