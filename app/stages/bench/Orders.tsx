import { BENCH_ORDERS, type BenchOrder } from '../../../engine'
import { chooseOrder, useLooking } from './looking'

/** In which order conductors are built. */
export function Orders() {
  const order = useLooking((s) => s.order)
  return (
    <fieldset className="orders" aria-label="Building order">
      {Object.entries(BENCH_ORDERS).map(([key, words]) => (
        <button
          key={key}
          type="button"
          aria-pressed={order === key}
          onClick={() => chooseOrder(key as BenchOrder)}
        >
          {words}
        </button>
      ))}
    </fieldset>
  )
}
