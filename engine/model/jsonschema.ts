import { z } from 'zod'
import { fileSchema } from './schema'

/** JSON Schema (2020-12) of the design file, for programs that write one. Kept in public/design-file.schema.json. */
export function designFileSchema(): object {
  return {
    title: 'Loomwright design file',
    ...z.toJSONSchema(fileSchema, { io: 'input', unrepresentable: 'any' }),
  }
}
