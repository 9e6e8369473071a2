import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { csv } from './list-page.ts';

const DEMO = resolve(import.meta.dirname, '../../sample-data/recorder-cabinet.csv');

/** The demo list as text, revision A. */
export const REVISION_A = readFileSync(DEMO, 'utf8');

/** Edits of the demo list, each in a row that stands there once. */
const EDITS: readonly (readonly [from: string, to: string])[] = [
  ['revision A, 2024-11-05', 'revision B, 2025-02-18'],
  // Newly wrong: the sheet is too thin for the shank.
  [
    'NUT-M5-15-CS,"Clinch nut, M5, hardened steel",4,RC-01,CRS,.060,.2697,.552,',
    'NUT-M5-15-CS,"Clinch nut, M5, hardened steel",4,RC-01,CRS,.048,.2697,.552,',
  ],
  // Changed without harm.
  ['NUT-M3-10-CS,"Clinch nut, M3, hardened steel",6,RC-01', 'NUT-M3-10-CS,"Clinch nut, M3, hardened steel",10,RC-01'],
  // Moved to another panel of the same sheet.
  [
    'PIN-4-10-12-CS,"Clinch pin, 4 x 12, hardened steel",2,RC-01,CRS,.060,.1634,.315,hinge side',
    'PIN-4-10-12-CS,"Clinch pin, 4 x 12, hardened steel",2,RC-01B,CRS,.060,.1634,.315,hinge side',
  ],
  // Fails before and after, in another sheet.
  ['8,RC-03,304 SS,16 ga,.2205,.473,display window', '8,RC-03,304 SS,18 ga,.2205,.473,display window'],
  // Removed: one that fails, one that holds.
  ['SPACER-M4-10-12-S3,"Through standoff, M4 x 12, 300-series stainless",4,RC-03,304 SS,16 ga,.2205,.473,\n', ''],
  ['NUT-M8-15-CS,"Clinch nut, M8, hardened steel",2,RC-01,CRS,.060,.4173,.788,\n', ''],
  // Added: one that holds, one that does not.
  [
    'SCREW-M4x10,"Pan head',
    'STUD-M4-10-16-CS,"Clinch stud, M4 x 16, hardened steel",3,RC-01,CRS,.060,.1634,.394,new\nNUT-M4-10-CS,"Clinch nut, M4, hardened steel",5,RC-01,CRS,.030,.2205,.473,new\nSCREW-M4x10,"Pan head',
  ],
  // Written differently, meaning the same.
  [
    'STUD-M5-10-16-CS,"Clinch stud, M5 x 16, hardened steel",8,RC-01,CRS,.060',
    'STUD-M5-10-16-CS,"Clinch stud, M5 x 16, hardened steel",8,RC-01,CRS,0.0600',
  ],
];

/** Revision B of the demo list; `more` are further edits. */
export function revisionB(more: readonly (readonly [string, string])[] = []): ReturnType<typeof csv> {
  const text = [...EDITS, ...more].reduce((list, [from, to]) => {
    if (list.split(from).length !== 2) throw new Error(`${from} does not stand in the demo list once`);
    return list.replace(from, to);
  }, REVISION_A);
  return csv('recorder-b.csv', text);
}
