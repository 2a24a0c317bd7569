import { z } from 'zod'
import { MOST_LETTERS, MOST_PARAGRAPHS } from './handover'
import { id, name, says, text } from './schemaforms'

const paragraphSchema = z.looseObject(
  {
    id: id(),
    heading: text(200).default(''),
    text: text(MOST_LETTERS).default(''),
    after: name(64).nullable().default(null),
  },
  says('an own paragraph: id, heading, text and the chapter that it follows'),
)

/** What an installer adds to the handover pack. */
export const handoverSchema = z.looseObject(
  {
    language: name(40).exactOptional(),
    hidden: z.array(name(64), says('a list of chapters')).exactOptional(),
    paragraphs: z
      .array(paragraphSchema, says('a list of own paragraphs'))
      .max(MOST_PARAGRAPHS, says(`at most ${MOST_PARAGRAPHS} own paragraphs`))
      .exactOptional(),
  },
  says('the handover pack: language, hidden chapters and own paragraphs'),
)
