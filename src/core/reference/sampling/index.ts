import type { Table } from '../../model/table.ts';
import { nutAql } from './nut-aql.ts';
import { pressInDocuments } from './press-in-documents.ts';
import { testDefinitions } from './test-definitions.ts';
import { samplingZ14 } from './z14.ts';

/** Every table about testing and sampling, for the page of sources and for the checks that all tables share. */
export const samplingTables: readonly Table<unknown>[] = [samplingZ14, nutAql, testDefinitions, pressInDocuments];
