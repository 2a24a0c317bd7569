import { CHECK_USAGE, check } from './check'
import { COMPARE_USAGE, compare } from './compare'
import { MERGE_USAGE, merge } from './merge'
import { NETWORK_USAGE, network, type Out } from './network'
import { PACK_USAGE, pack } from './pack'
import { SYMBOLS_USAGE, symbols } from './symbols'

/** Commands by name. Each reads files and writes to the shell; the engine does the rest. */
const COMMANDS = new Map<string, (args: readonly string[], out: Out) => Promise<number>>([
  ['check', check],
  ['compare', compare],
  ['merge', merge],
  ['pack', pack],
  ['network', network],
  ['symbols', symbols],
])

// A reader that has seen enough (a pager, `head`) closes the pipe: no fault of the command.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
})

const [name = '', ...args] = process.argv.slice(2)
const command = COMMANDS.get(name)
if (command) process.exitCode = await command(args, { print: console.log, complain: console.error })
else {
  console.error(
    `Usage:\n  ${CHECK_USAGE}\n  ${COMPARE_USAGE}\n  ${MERGE_USAGE}\n  ${PACK_USAGE}\n  ${NETWORK_USAGE}\n  ${SYMBOLS_USAGE}`,
  )
  process.exitCode = 2
}
