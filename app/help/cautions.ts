/** The usual cautions of the trade, as on every printed sheet. Common practice, no published source. */
export const CAUTIONS: readonly string[] = [
  'Isolate every source before work: batteries, charger, PV array, mains. A PV array in daylight cannot be switched off: cover or disconnect it.',
  'A battery drives thousands of amps into a short circuit. Insulate tools and terminals; take off rings and watches.',
  'A DC arc does not go out by itself. Break DC only with devices rated for it, and never a PV plug under load.',
  'No sparking devices in gas-locker and battery spaces. Ventilate vented batteries.',
  'Torque terminations to the maker’s figure, and check them again after the first drives.',
  'Everything at mains voltage is for licensed persons only.',
]

export const LAST_WORD =
  'Loomwright says which checks were made, against which figures, and what they found. It does not judge an installation. Local codes and the judgement of a licensed practitioner prevail.'
