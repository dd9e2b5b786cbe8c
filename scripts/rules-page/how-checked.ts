import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** A test file that tries a rule, and what its comments name as the outside source of the numbers. */
export interface Check {
  readonly file: string
  readonly sources: readonly string[]
}

interface TestFile {
  readonly path: string
  readonly text: string
}

const TEST_FOLDERS = ['tests/rules', 'tests/laws']
/** A top-level block of tests with the comment before it. */
const BLOCK =
  /(?:^\/\/.*\n|^\/\*[\s\S]*?\*\/\n)*^(?:describe|test|it)[.(][\s\S]*?^\}\)|^(?:describe|test|it)\b.*$/gm
/** What a comment that names a source says: a document, a book, a computation made apart, or that there is none. */
const NAMES_A_SOURCE =
  /IPC|MIL|STD|IEC|ISO|ASTM|ECSS|NASA|NIST|JESD|EN \d|Directive|20\d\d|19\d\d|Handbook|Holden|Copper Development|by hand|[Cc]omputed|independent|common (practice|knowledge)|from memory|least squares|scipy|mpmath|Montgomery|Wheeler|Hahn|Nelson|Cohen/

/** A rule's own module, which lies in the folder of its stage. */
const RULE_IMPORT = /from '@\/shared\/rules\/[a-z]+\/[a-z-]+'/g

/** Every test file once, in the order of their paths. */
export const testFiles = (root: string): TestFile[] =>
  TEST_FOLDERS.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.test.ts'))
      .map((name) => `${folder}/${name.replaceAll('\\', '/')}`),
  )
    .toSorted()
    .map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }))

/** The tests that import a rule by the module of its name, and the sources that the blocks which use it name. */
export function howChecked(ruleId: string, files: readonly TestFile[]): Check[] {
  const importOfRule = new RegExp(`import \\{([^}]*)\\} from '@/shared/rules/[a-z]+/${ruleId}'`)
  return files.flatMap(({ path, text }) => {
    const names = importOfRule
      .exec(text)?.[1]
      ?.split(',')
      .map((name) => name.trim())
      .filter(Boolean)
    if (!names) return []
    return [{ file: path, sources: sourcesIn(blocksUsing(names, text)) }]
  })
}

/** The tests of boards that ask for a rule by its name, and the sources that the blocks which do so name. */
export const howCheckedOnBoards = (ruleId: string, files: readonly TestFile[]): Check[] =>
  files
    .filter(({ path, text }) => path.startsWith('tests/rules/board/') && text.includes(`'${ruleId}'`))
    .map(({ path, text }) => {
      const blocks = [...text.matchAll(BLOCK)].map(([block]) => block)
      return {
        file: path,
        sources: sourcesIn(blocks.filter((block) => block.includes(`'${ruleId}'`)).join('\n')),
      }
    })

/** Blocks that use any of the names; all of a file that tries one rule alone, or whose own helpers use it. */
function blocksUsing(names: readonly string[], text: string): string {
  if ([...text.matchAll(RULE_IMPORT)].length === 1) return text
  const blocks = [...text.matchAll(BLOCK)].map(([block]) => block)
  const using = blocks.filter((block) => names.some((name) => new RegExp(`\\b${name}\\b`).test(block)))
  return using.length > 0 ? using.join('\n') : text
}

/** Comments on lines one after the other are one. */
function sourcesIn(text: string): string[] {
  const comments: string[] = []
  let open = false
  for (const line of text.split('\n')) {
    const words = /^\s*\/\/\s*(.*)$/.exec(line)?.[1]
    if (words === undefined) open = false
    else if (open) comments[comments.length - 1] += ` ${words}`
    else {
      comments.push(words)
      open = true
    }
  }
  return [...new Set(comments.filter((comment) => NAMES_A_SOURCE.test(comment)))]
}
