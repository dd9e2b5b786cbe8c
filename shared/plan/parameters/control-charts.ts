import { choiceParameter, flagParameter } from '@/shared/plan/parameter'

export const chartRules = choiceParameter({
  key: 'chart-rules',
  label: 'Chart signals to be answered',
  help: 'A point beyond the limits is answered always. The zone rules find small shifts sooner, at the price of more false alarms. Left open, points beyond the limits only.',
  owner: 'quality',
  options: [
    { value: 'limits', label: 'Points beyond the control limits' },
    { value: 'zones', label: 'All four zone rules of the Western Electric handbook' },
  ],
})

export const capabilityAsked = flagParameter({
  key: 'capability-asked',
  label: 'Capability of the process is to be shown',
  help: 'Asks each log with a specified window for its Cpk with a confidence bound. Left open, it is not asked.',
  owner: 'quality',
})
