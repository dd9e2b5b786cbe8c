/** In whose name the program writes what follows from its own renewal: nobody decides anything by it. */
export const THE_PROGRAM = { actorId: '00000000-0000-0000-0000-000000000000', actorName: 'Liquidus' } as const
