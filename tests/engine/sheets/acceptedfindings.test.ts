import { expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import type { Design } from '../../../engine/model/design'
import { analyse } from '../../../engine/rules/analyse'
import type { Finding } from '../../../engine/rules/finding'
import { findingBlocks } from '../../../engine/sheets/findingblocks'
import { sentence } from '../../../engine/words/findings'
import { design } from '../../build'

const wordsOf = (of: Design, findings: readonly Finding[]) =>
  findingBlocks(of, findings, new Map(), 120)
    .flatMap((block) => block.marks)
    .flatMap((mark) => (mark.is === 'text' ? [mark.text] : []))

test('an accepted danger is printed in full, apart, with reason, name and date', () => {
  const tap = design({ systemV: 12 })
    .part('battery', 'G1', { dischargeA: 100 })
    .part('load', 'E1', { currentA: 5 })
    .join('G1.+', 'E1.+', { size: '2.5mm2', lengthM: 3 })
    .join('E1.-', 'G1.-', { size: '2.5mm2', lengthM: 3, returnOf: 'W1' })
    .build()
  const { findings } = analyse(tap)
  const danger = findings.find((f) => f.level === 'danger')!
  const open = findings.filter((f) => f.level === 'danger').length - 1
  const done = apply(tap, {
    do: 'accept',
    accepted: { key: danger.key, level: 'danger', reason: 'Bench set-up', by: 'R. Hale', date: '2026-03-04' },
  })
  if (done.refused) throw new Error(done.why)
  const words = wordsOf(done.design, findings).join(' ')
  const [before, after] = words.split('Accepted with a reason')
  expect(before).toContain(`${open} danger`)
  expect(before).toContain('1 accepted with a reason')
  expect(before).not.toContain(sentence(danger, tap).title)
  expect(after).toContain('Danger')
  expect(after).toContain(sentence(danger, tap).title)
  expect(after).toContain('Accepted by R. Hale, 2026-03-04: Bench set-up')
})
