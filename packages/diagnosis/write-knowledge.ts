/** Writes KNOWLEDGE.md from the tables (the package itself does no input or output). */
import { writeFileSync } from 'node:fs'
import { defaultKnowledge } from './src/knowledge/knowledge.ts'
import { knowledgePage } from './src/knowledge/page.ts'

writeFileSync(new URL('./KNOWLEDGE.md', import.meta.url), knowledgePage(defaultKnowledge))
