import { ruleSetByKey } from '../../../engine/index'
import type { Design, Settings } from '../../../engine/model/design'
import type { Values } from '../../../engine/model/fields'
import { type DesignBuilder, design, type JoinWords } from '../../build'

/** A demo design being written: conductors are numbered from `firstNumber`, coloured by the rule set. */
export class Draft {
  private builder: DesignBuilder
  private next: number
  private readonly colours: { positive: string; negative: string; sense: string; data: string; mains: string }

  constructor(id: string, settings: Partial<Settings>, firstNumber: number) {
    this.builder = design(settings).as(id)
    this.next = firstNumber
    const ruleSet = ruleSetByKey(settings.ruleSet ?? '')
    if (!ruleSet) throw new Error(`no rule set ${settings.ruleSet}`)
    this.colours = ruleSet.colours
  }

  part(kind: string, designation: string, name: string, location: string, values: Values = {}): this {
    this.builder = this.builder.part(kind, designation, values, { name, location })
    return this
  }

  /** One conductor; gives its number. */
  run(from: string, to: string, size: string, lengthM: number | null, words: JoinWords = {}): string {
    const number = `W${this.next++}`
    this.builder = this.builder.join(from, to, {
      number,
      size,
      lengthM,
      colour: this.colours.positive,
      ...words,
    })
    return number
  }

  back(from: string, to: string, size: string, lengthM: number, words: JoinWords = {}): string {
    return this.run(from, to, size, lengthM, { colour: this.colours.negative, ...words })
  }

  /** A feed and its return, both of one size and length. */
  pair(
    feed: readonly [string, string],
    back: readonly [string, string],
    size: string,
    lengthM: number,
    words: JoinWords = {},
  ): this {
    const number = this.run(...feed, size, lengthM, words)
    this.back(...back, size, lengthM, { ...words, returnOf: number })
    return this
  }

  data(from: string, to: string, lengthM: number): this {
    this.run(from, to, '0.75mm2', lengthM, { colour: this.colours.data })
    return this
  }

  mains(from: string, to: string, lengthM: number): this {
    this.run(from, to, '1.5mm2', lengthM, { colour: this.colours.mains })
    return this
  }

  build(): Design {
    return this.builder.build()
  }
}
