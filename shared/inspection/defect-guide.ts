import type { DefectKind } from '@/shared/records/inspection'
import type { Source } from '@/shared/sources/source'

/** What an inspector must know of one kind of defect. */
interface GuideEntry {
  /** What is seen. */
  readonly look: string
  /** Where it usually comes from. */
  readonly cause: string
  /** What to do about the joint and the process. */
  readonly asks: string
}

export const GUIDE_SOURCE: Source = {
  cite: 'Kinds of defect after IPC-A-610 and J-STD-001, in our own words; causes are common practice',
  how: 'from memory',
}

/** The defects of the trade, in words; the drawings beside them come from the geometry of the joint. */
export const DEFECT_GUIDE = {
  'non-wetting': {
    look: 'Solder stands against bare lead or land with a rounded edge; it has touched the metal and not taken it.',
    cause: 'Oxide, lacquer or soil on the surface, flux too weak or spent, or the metal never hot enough.',
    asks: 'Mend by hand with fresh flux. Where it recurs, test the lot’s solderability again and look at its store time.',
  },
  dewetting: {
    look: 'Solder has covered the metal and drawn back into drops, with a thin grey film between them.',
    cause:
      'A coating that dissolved over a base that does not wet, gas from the plating, or too long in the heat.',
    asks: 'Do not heat it again and again. Look at coating thickness and intermetallic growth of the lot.',
  },
  'insufficient solder': {
    look: 'The fillet is thin and stops short of the land’s edge; the lead’s outline is bare far down.',
    cause:
      'Too little contact with the wave, a hole too wide for its lead, flux not reaching, or a tip taken off early.',
    asks: 'Add solder once. Check wave height, dwell and the clearance of that hole.',
  },
  'hole not filled': {
    look: 'From the component side the barrel is open: solder stands below its edge with a hollow top.',
    cause:
      'Too little heat or preheat, copper planes that draw heat, flux not in the hole, or poor barrel plating.',
    asks: 'Judge the fill against the class. Check preheat and dwell; cut one joint open where the depth is in doubt.',
  },
  'excess solder': {
    look: 'The surface bulges; the lead’s outline cannot be seen, and what wets beneath is hidden.',
    cause: 'Board leaves the wave wrongly, bath too cold, or wire fed too long by hand.',
    asks: 'Take solder out so that the wetting can be seen. Check exit angle and bath temperature.',
  },
  bridge: {
    look: 'Solder spans two joints that belong to different nets.',
    cause:
      'Gap too small or long bare runs across the travel, flux spent before the exit, or conveyor too fast.',
    asks: 'Take it off and test the circuit. Look where on the board bridges gather, and which way those rows lie.',
  },
  icicle: {
    look: 'Solder is drawn out to a point at the lead’s end.',
    cause:
      'Solder froze while it drained: bath or tip too cold, flux spent, or a lead that draws the heat off.',
    asks: 'Remove it where it shortens a gap for voltage. Check bath temperature and preheat.',
  },
  'solder ball': {
    look: 'A bead of solder stands loose or lightly held on the mask beside a joint.',
    cause: 'Moist flux that spits, flux not dried before the wave, or a mask that holds solder.',
    asks: 'Remove what could come loose or shorten a gap. Check preheat and the drying of the flux.',
  },
  blowhole: {
    look: 'A hole opens in the fillet’s surface, often round, with a channel that runs inward.',
    cause: 'Moisture or plating residue in the barrel wall boils and blows through the solder as it freezes.',
    asks: 'Bake boards of that lot before soldering, and measure the copper in the barrel.',
  },
  void: {
    look: 'A cavity inside the solder: seen by X-ray or in a section, sometimes as a dent in the fillet.',
    cause: 'Gas or flux that could not leave in time.',
    asks: 'Estimate its share of the section. Judge by the limit for microsections.',
  },
  'cold joint': {
    look: 'Lumpy, dull surface that meets the lead steeply; wetting is poor though there is solder enough.',
    cause: 'Too little heat: a cold tip, a large lead, too short a dwell.',
    asks: 'Heat it once, properly, with flux. Check tip temperature and dwell. Lead-free joints are dull when sound.',
  },
  'disturbed joint': {
    look: 'Fine ripples or a frosted, stepped surface; sometimes a hairline round the lead.',
    cause: 'Something moved while the solder froze: conveyor, board, or a hand.',
    asks: 'Melt it again at rest. Find what moves.',
  },
  'fractured joint': {
    look: 'A crack runs through the solder, mostly near the lead or along the land.',
    cause: 'Leads cut or bent after soldering, a board that flexed, or thermal cycling.',
    asks: 'Set the assembly aside until the cause is known: joints beside it may be cracked unseen.',
  },
  'lifted land': {
    look: 'The land’s outer edge stands off the laminate, with or without its conductor.',
    cause: 'Too much or too many heats, or force on the lead while the adhesive was hot.',
    asks: 'Heat it no more. Design and quality decide whether it may stay.',
  },
} as const satisfies Record<DefectKind, GuideEntry>
