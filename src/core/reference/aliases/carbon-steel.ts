import type { Table } from '../../model/table.ts';
import { type Designation, of } from './designation.ts';

const NAMED = { withTemper: true } as const;
const S355 = 'S355 reaches 630 MPa when it is not thermomechanically rolled: judged up to S420MC';
const REVERSED = 'CR numbers run the other way in newer standards: ask which one';

/** Names of uncoated carbon steel sheet. */
export const carbonSteelNames: Table<Designation> = {
  id: 'aliases-carbon-steel',
  title: 'Names of carbon steel sheet',
  sources: [
    { document: 'ASTM A1008, A1011, A109 and their forerunners', place: 'grade names', mark: 'printed' },
    { document: 'EN 10130, EN 10139, DIN 1623, JIS G3141, BS 1449', place: 'equivalents', mark: 'printed' },
    { document: 'words of lists', place: 'common practice, no source', mark: 'memory' },
  ],
  rows: [
    of(
      'crs-a1008-cs',
      `
        CRS; CR; CRCA; CRC; C.R.S.; CRS 1008; CRS 1010; 1008; 1010; 1008/1010; LCS; CR STEEL; STEEL CR; CR SHEET;
        AP01; SAE 1008; SAE 1010; AISI 1008; AISI 1010; G10080; G10100; C1008; C1010; A1008; A1008 CS;
        A1008 CS TYPE A; A1008 CS TYPE B; A1008 CS TYPE C; A1008 CS TYPE A/B/C; A1008 CS-A; A1008 CS-B; A1008 CS-C;
        A1008-CS A; A1008 CS B; CS TYPE A; CS TYPE B; CS TYPE C; CS-B`,
      'memory',
    ),
    of(
      'crs-a1008-cs',
      `
        COLD ROLLED; COLD ROLL; COLD-ROLLED STEEL; COLD REDUCED; KALTGEWALZT; LAMINE A FROID; LAMINADO EN FRIO;
        LAMINADO A FRIO; LAMINATO A FREDDO; KOUDGEWALST; KALLVALSAD; ZIMNOWALCOWANA; 冷轧; 冷轧钢; 冷轧板; 冷轧钢板; 冷軋;
        冷間圧延鋼板`,
      'memory',
      { rolled: true },
    ),
    of(
      'hrpo-a1011-cs',
      `
        HOT ROLLED; HOT ROLL; HOT-ROLLED STEEL; WARMGEWALZT; LAMINE A CHAUD; LAMINADO EN CALIENTE;
        LAMINADO A QUENTE; LAMINATO A CALDO; WARMGEWALST; VARMVALSAD; GORACOWALCOWANA; 热轧; 热轧板; 热轧钢板; 酸洗板`,
      'memory',
      { rolled: true },
    ),
    of('crs-a1008-cs', 'CQ; A366 CQ', 'printed'),
    of('crs-a1008-cs', 'A366', 'memory'),
    of('crs-a1008-cs hrpo-a1011-cs', 'Q195', 'memory', { remark: 'Q195 is rolled hot and cold' }),
    of('dc01-lc', 'DC01; FeP01; FE P01; 1.0330; St12; St2; CS4', 'printed'),
    of('dc01-lc', 'RRSt 1203; 10330', 'memory'),
    of('dc01-lc', '1.033', 'memory', { remark: '1.033 is read as 1.0330, its last zero lost' }),
    of('dc01-lc', '08', 'memory', { needsMetal: true }),
    of('dc01-lc', 'DC01 LC; DC01+LC; DC01-LC', 'memory', NAMED),
    of('dc01-lc dc04-lc', 'CR4', 'printed', { remark: REVERSED }),
    of('dc01-lc dc04-lc', 'CR1', 'memory', { remark: REVERSED }),
    of('dc01-lc dc03-lc', '08Al', 'printed', { remark: '08Al stands for DC01 and for DC03' }),
    of('dc01-a', 'DC01+A', 'memory', NAMED),
    ...['290', '340', '390', '440', '490', '590', '690'].map((grade) =>
      of(`dc01-c${grade}`, `DC01 C${grade}; DC01+C${grade}`, 'printed', NAMED),
    ),
    of('spcc-s', 'SPCC', 'printed'),
    of('spcc-s', 'SPCCT; SPCC-T', 'memory'),
    of('spcc-s', 'SPCC-SD; SPCC-SB; SPCC-S; SPCC SD; SPCC SB', 'memory', NAMED),
    of('spcc-a', 'SPCC-A; SPCC-AD; SPCC-AB', 'memory', NAMED),
    of('spcc-8', 'SPCC-8; SPCC-8D; SPCC-8B', 'memory', NAMED),
    of('spcc-4', 'SPCC-4; SPCC-4D; SPCC-4B', 'memory', NAMED),
    of('spcc-2', 'SPCC-2; SPCC-2D; SPCC-2B', 'memory', NAMED),
    of('spcc-1', 'SPCC-1; SPCC-1D; SPCC-1B', 'memory', NAMED),
    ...['1', '2', '3', '4', '5'].map((number) =>
      of(
        `a109-t${number}`,
        `
        A109 NO.${number}; A109 #${number}; A109-${number}; A109 TEMPER ${number}; A109 NO.${number} TEMPER;
        A109 T${number}`,
        'printed',
        NAMED,
      ),
    ),
    of('a109-t1 a109-t2 a109-t3 a109-t4 a109-t5', 'A109; A109 STRIP; COLD ROLLED STRIP', 'memory'),
    of('crs-a1008-ds', 'DQ; A619 DQ', 'printed'),
    of('crs-a1008-ds', 'A619; DRAWING QUALITY', 'memory'),
    of(
      'crs-a1008-ds',
      'A1008 DS; A1008 DS TYPE A; A1008 DS TYPE B; DRAWING STEEL; DS TYPE A; DS TYPE B; CRS DS',
      'memory',
    ),
    of('dc03-lc', 'DC03; FeP03; FE P03; 1.0347; St13', 'printed'),
    of('dc03-lc dc04-lc', 'CR3; CR2', 'printed', { remark: REVERSED }),
    of('dc03-lc', 'RRSt3; RRSt13; CS3', 'memory'),
    of('dc03-a', 'DC03+A', 'memory', NAMED),
    of('spcd', 'SPCD', 'printed'),
    of('spcd', 'SPCD-SD; SPCD-SB', 'memory'),
    of('dc04-lc', 'DC04; FeP04; FE P04; 1.0338; St14; CS1', 'printed'),
    of('dc04-lc', 'DC04 LC', 'memory'),
    of('dc05', 'DC05; 1.0312; St15', 'printed'),
    of('dc06', 'DC06; 1.0873; St16', 'printed'),
    of('dc06', 'IF STEEL', 'memory'),
    of('spce', 'SPCE', 'printed'),
    of('spce', 'SPCE-SD; SPCE-SB; SPCF; SPCG', 'memory'),
    of('crs-a1008-ds', 'DQSK; A620 DQSK', 'printed'),
    of('crs-a1008-ds', 'DDQ; EDDQ; AKDQ; A620; A1008 DDS; A1008 EDDS; A1008 DDS/EDDS', 'memory'),
    of(
      'hrpo-a1011-cs',
      `
        HR; HRS; HRPO; HRP&O; HR P&O; HRP/O; P&O; P/O; PO; PICKLED & OILED; PICKLED AND OILED; PICKLED/OILED;
        A1011; A1011 CS; A1011 CS TYPE A; A1011 CS TYPE B; A1011 CS-B; A1011 CS B; A569; BLACK SHEET; HR4; HR14;
        HR STEEL; STEEL HR`,
      'memory',
    ),
    of('dd11', 'DD11; 1.0332; StW22', 'memory'),
    of('dd13', 'DD13; 1.0335; StW24', 'memory'),
    of('sphc', 'SPHC; SPHC-P', 'memory'),
    of('a36', 'A36; A-36; ASTM A36', 'memory'),
    of('s235jr', 'S235JR; S235; S235JR+AR; 1.0038; ST37; St37-2; RSt37-2; Q235; Q235A; Q235B; FE360', 'memory'),
    of('a36 s235jr', 'SS400; SS41', 'memory', { remark: 'SS400 is a structural steel, not stainless' }),
    of('hslas50 hslas60 hslas80', 'HSLA; HSLAS; HSLAS-F; HSLA STEEL; A1011/A1008 HSLAS; HSLAS-F GR 50-80', 'memory', {
      remark: 'HSLA without a grade: 50, 60 or 80',
    }),
    ...['50', '60', '80'].map((grade) =>
      of(
        `hslas${grade}`,
        `
        HSLA${grade}; HSLA GR ${grade}; HSLA GRADE ${grade}; HSLAS GR ${grade}; HSLAS GRADE ${grade};
        HSLAS ${grade}; HSLAS-F GR ${grade}; HSLAS-F GRADE ${grade}; A1011 HSLAS GR ${grade};
        A1008 HSLAS GR ${grade}; A1011 HSLAS-F GR ${grade}; GR${grade}; GR ${grade}; GRADE ${grade}; ${grade} KSI;
        A1011 GR ${grade}; A1011 GRADE ${grade}`,
        'memory',
      ),
    ),
    of('s355mc', 'S355MC; 1.0976; QStE 340 TM', 'memory'),
    of('s420mc', 'S420MC; 1.0980; 1.098; QStE 420 TM', 'memory'),
    of('s500mc', 'S500MC; 1.0984; QStE 500 TM', 'memory'),
    of('s355mc s420mc', 'S355; S355JR; S355J2; S355J2+N; ST52; ST52-3; Q345; Q345B; Q355; Q355B; 16Mn', 'memory', {
      remark: S355,
    }),
    of('hc260la', 'HC260LA; 1.0480; H240LA; ZStE 260', 'memory'),
    of('hc260la', '1.048', 'memory', { remark: '1.048 is read as 1.0480, its last zero lost' }),
    of('hc340la', 'HC340LA; 1.0548; ZStE 340', 'memory'),
    of('hc420la', 'HC420LA; 1.0556; ZStE 420', 'memory'),
  ],
};
