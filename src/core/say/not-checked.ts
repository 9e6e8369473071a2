/** What the tool does not look at, whatever the verdict: the other side of the list of checks. */
export const NOT_CHECKED: readonly { readonly title: string; readonly text: string }[] = [
  {
    title: 'What was really delivered and made',
    text: 'The hardness of the sheet in hand, the hole as it was punched, the burr and its side, mixed-up parts: only the list and the catalogue are read, never a drawing or the part.',
  },
  {
    title: 'How it is pressed',
    text: 'Whether the press is square and stops where it should, whether punch and anvil reach the place, whether the fastener is fully seated. Force is compared with the press; its set-up is not known.',
  },
  {
    title: 'Distortion of the panel',
    text: 'Thin or narrow panels, rows of fasteners, and fasteners near cut-outs may warp or bulge. Edge, spacing and bend are checked as single distances, not the shape of the part.',
  },
  {
    title: 'Pull-through, side loads and loads together',
    text: 'Push-out and torque-out are compared with ratings where the list gives a load. Pull-through, prying, shear, and several loads at once are not.',
  },
  {
    title: 'Fatigue, shock and loosening by vibration',
    text: 'Nothing is said about loads that come and go, nor about screws that work loose.',
  },
  {
    title: 'Heat and cold',
    text: 'Ratings and hardness are those at room temperature. What happens hot, cold, or between the two is not looked at.',
  },
  {
    title: 'Corrosion over the years',
    text: 'Only the pairing of metals is screened, by their anodic index. Salt, crevices, damaged coatings and time are not.',
  },
  {
    title: 'Sealing and cleanliness',
    text: 'Whether a joint holds water, gas or dust back, and whether chips or plating come loose.',
  },
  {
    title: 'Electrical bonding',
    text: 'Whether current or an earth connection passes from the fastener into the sheet.',
  },
  {
    title: 'Stacked sheets, welds and soft spots',
    text: 'One sheet is judged, as rolled. Two sheets pressed together, and sheet softened or hardened by welding, cutting or forming, are not.',
  },
  {
    title: 'The screw and the joint as a whole',
    text: 'Thread, engagement and tightening torque are looked at where the list names a screw. Washers, clamped parts, settling and repeated use are not.',
  },
  {
    title: 'Papers',
    text: 'Whether a part may be used where the law, a standard or the customer asks for approval, certificates or traceability.',
  },
];
