import type { TestRecord } from './commissioning'
import { testRecordSchema } from './commissioningschema'
import type { ProblemList } from './problems'
import { readKeyed } from './readkeyed'

/** The commissioning record; a damaged line is left out and told: its step then stands as not done. undefined: none. */
export const readCommissioning = (data: unknown, problems: ProblemList): readonly TestRecord[] | undefined =>
  readKeyed('commissioning', 'id', testRecordSchema, ['of', 'remark', 'by'], data, problems) as
    | readonly TestRecord[]
    | undefined
