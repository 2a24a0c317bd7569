import { type Problem, type ReadResult, readDesign } from '../../engine/index'
import { attachedIn, isPdf } from '../print/attached'

/** A PDF carries a copy: it is not the file to save to. */
export type ReadBytes = ReadResult & { readonly from: 'design file' | 'PDF' }

/** A design from the bytes of a design file, or of a PDF that has one inside; problems in plain words. Never throws. */
export function readBytes(bytes: Uint8Array): ReadBytes {
  if (!isPdf(bytes)) return { ...readDesign(new TextDecoder().decode(bytes)), from: 'design file' }
  const { texts, faults } = attachedIn(bytes)
  const reads = texts.map(readDesign)
  const best =
    reads.find((r) => r.design && r.problems.length === 0) ?? reads.find((r) => r.design) ?? reads[0]
  if (best) return { ...best, problems: best.problems.map(inside), from: 'PDF' }
  return { problems: faults.length > 0 ? faults.map(faulty) : [NOTHING], from: 'PDF' }
}

const EXPECTED = 'a PDF made by Loomwright, with the design file inside'
const NOTHING: Problem = { path: '', expected: EXPECTED, found: 'a PDF without a file inside' }

const faulty = (fault: string): Problem => ({
  path: '',
  expected: EXPECTED,
  found: `this: ${fault.replace(/\.$/, '')}`,
})

/** Where a problem stands, seen from the PDF. */
const inside = (p: Problem): Problem => ({
  ...p,
  path: p.path === '' ? 'design inside the PDF' : `design inside the PDF: ${p.path}`,
})
