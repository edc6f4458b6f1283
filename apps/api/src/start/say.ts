/** A line for whoever started the process. */
export function say(line: string): void {
  process.stdout.write(`${line}\n`)
}
