type Side = 'top' | 'bottom'

const WORDS: Readonly<Record<string, Side>> = {
  top: 'top',
  t: 'top',
  front: 'top',
  f: 'top',
  primary: 'top',
  component: 'top',
  comp: 'top',
  bottom: 'bottom',
  bot: 'bottom',
  b: 'bottom',
  back: 'bottom',
  secondary: 'bottom',
  solder: 'bottom',
}

/** The side that a word stands for, as "Top", "BottomLayer" or "solder side" do; undefined where it is none. */
export function sideFrom(word: string): Side | undefined {
  const bare = word
    .toLowerCase()
    .replace(/[^a-z]/g, '')
    .replace(/(side|layer|copper|cu)+$/, '')
  return Object.hasOwn(WORDS, bare) ? WORDS[bare] : undefined
}
