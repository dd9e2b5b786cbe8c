import type { Story } from '@/seed/story'

export async function assess(story: Story): Promise<void> {
  void story
}
