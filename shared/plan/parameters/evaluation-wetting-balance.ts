import { choiceParameter, textParameter } from '@/shared/plan/parameter'

export const wettingBalanceCriteria = choiceParameter({
  key: 'wetting-balance-criteria',
  label: 'Wetting-balance criteria',
  help: 'A wetting balance gives evidence, not a verdict (IEC 60068-2-69:2017). It decides a lot only where the parties agreed criteria, by name.',
  owner: 'quality',
  options: [
    { value: 'evidence', label: 'None agreed: evidence only' },
    { value: 'set-a', label: 'Set A of J-STD-002' },
    { value: 'set-b', label: 'Set B of J-STD-002' },
  ],
})

export const wettingBalanceAgreedBy = textParameter({
  key: 'wetting-balance-agreed-by',
  label: 'Criteria agreed by',
  help: 'The people who agreed that the balance decides, for supplier and for us, and where it is written.',
  owner: 'quality',
  maxLength: 200,
})
