import { expect, test } from 'vitest'
import { newDesign } from '../../../engine/model/newdesign'
import { lostSigns } from '../../../engine/sheets/lostsigns'

test('texts that lose signs on paper are found wherever they stand, records of work included', () => {
  const design = {
    ...newDesign('a', { name: 'Van of Zoë', customer: '水泵 Ltd' }),
    handover: {
      language: 'en',
      hidden: [],
      paragraphs: [{ id: 'h', heading: '', text: 'Насос', after: null }],
    },
    texts: [{ id: 't', text: 'mΩ, 35\u202fmm²', view: 'all' as const, x: 0, y: 0 }],
  }
  expect(lostSigns(design)).toEqual([
    { text: '水泵 Ltd', signs: '水泵' },
    { text: 'Насос', signs: 'Насо' },
  ])
  expect(lostSigns(newDesign('b', { name: 'Plain' }))).toEqual([])
})
