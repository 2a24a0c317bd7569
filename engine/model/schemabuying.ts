import { z } from 'zod'
import { ARTICLE_BOUNDS, MAKING_BOUNDS } from '../tables/making'
import { figure, name, says, text } from './schemaforms'

const { allowanceM, thinStockM, thickStockM } = MAKING_BOUNDS

/** How the workshop makes conductors up and buys. */
export const makingSchema = z.looseObject(
  {
    allowanceM: figure(...allowanceM, 'm'),
    thinStockM: figure(...thinStockM, 'm'),
    thickStockM: figure(...thickStockM, 'm'),
    currency: text(12).default(''),
  },
  says('allowance at each end and stock lengths, m'),
)

export const articleSchema = z.looseObject(
  {
    key: name(400),
    number: text(80).default(''),
    price: figure(...ARTICLE_BOUNDS.price, '')
      .nullable()
      .default(null),
    weightKg: figure(...ARTICLE_BOUNDS.weightKg, 'kg')
      .nullable()
      .default(null),
  },
  says('an article: key of its row, own number, price and weight'),
)
