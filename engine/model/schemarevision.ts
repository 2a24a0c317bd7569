import { z } from 'zod'
import { name, says, text } from './schemaforms'

const digest = () => {
  const words = says('a digest of 64 hexadecimal digits')
  return z.string(words).regex(/^[0-9a-f]{64}$/, words)
}

export const revisionSchema = z.looseObject(
  {
    number: name(40),
    date: name(40),
    by: text(200),
    reason: text(2000),
    digest: digest(),
    frozen: z.string(says('the design as it was issued, packed')),
  },
  says('an issued revision: number, date, by, reason, digest and the design'),
)
