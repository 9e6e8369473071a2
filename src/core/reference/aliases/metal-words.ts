import type { SheetFamily } from '../../model/sheet.ts';
import { split } from './designation.ts';

/** A word for a metal that leaves alloy and temper open. */
export interface MetalWord {
  readonly words: readonly string[];
  /** Entry ids of everything that the word ordinarily stands for. */
  readonly candidates: readonly string[];
  /** Every family that the word covers: an alloy of one of these beside it settles what was meant. */
  readonly families: readonly SheetFamily[];
  readonly remark?: string;
}

const PLAIN: readonly SheetFamily[] = ['carbon-steel', 'galvanized-steel', 'galvannealed-steel'];
const RUSTLESS: readonly SheetFamily[] = ['stainless-austenitic', 'stainless-ferritic', 'stainless-martensitic'];
const PLAIN_STEELS = ['crs-a1008-cs', 'hrpo-a1011-cs', 'a36', 'gi-cs'];
const STAINLESS_STEELS = ['301', '304', '304l', '316', '316l', '430', '410'];
const STRUCTURAL_STEELS = ['gi-ss33', 'gi-ss40', 'gi-ss50', 'gi-ss80'];

/** Words for a metal, in the languages in which lists arrive. */
export const metalWords: readonly MetalWord[] = [
  {
    words: split(
      `
        STEEL; STL; STEEL SHEET; STAHL; STAHLBLECH; ACIER; TOLE ACIER; ACERO; ACCIAIO; ACO; STAAL; PLAATSTAAL;
        STAL; STALPLAT; BLACHA STALOWA; STALOWA; STALOWY; FERRO; STALBLECH; CHAPA DE ACERO; FER; FIERRO; HIERRO; 钢;
        钢板; 鋼; 鋼板; 鉄; 鉄板; スチール`,
    ),
    candidates: PLAIN_STEELS,
    families: [...PLAIN, ...RUSTLESS],
  },
  {
    words: split(
      'MS; M.S.; MILD STEEL; MILD; LOW CARBON STEEL; LOW-CARBON; UNALLOYED STEEL; BAUSTAHL; ACIER DOUX; ACERO DULCE; 碳钢; 低碳钢; 軟鋼; 普通鋼',
    ),
    candidates: PLAIN_STEELS,
    families: PLAIN,
  },
  {
    words: split(
      'CS; C/S; CARBON STEEL; C-STEEL; COMMERCIAL STEEL; CARBON; KOHLENSTOFFSTAHL; ACERO AL CARBONO; ACIER AU CARBONE',
    ),
    candidates: PLAIN_STEELS,
    families: PLAIN,
    remark: 'CS stands for commercial steel, carbon steel and strip grades CS1 to CS4',
  },
  {
    words: split(
      `
        STAINLESS; STAINLESS STEEL; SST; S/S; S.ST; STST; ST.ST; STN STL; SSTL; STAINLESS STL; INOX; CRES; SUS;
        STAINLES; STANLESS; STAINLESSSTEEL; A240; A666; ASTM A240; ASTM A666; CORROSION RESISTANT STEEL; EDELSTAHL;
        NIROSTA; NICHTROSTENDER STAHL; ROSTFREI; ROSTFREIER STAHL; ACIER INOX; ACIER INOXYDABLE; INOXYDABLE;
        ACERO INOXIDABLE; ACERO INOX; INOXIDABLE; ACCIAIO INOX; ACCIAIO INOSSIDABILE; INOSSIDABILE; ACO INOX;
        ACO INOXIDAVEL; INOXIDAVEL; RVS; ROESTVAST STAAL; ROESTVRIJ STAAL; ROESTVRIJ; ROESTVAST; ROSTFRITT;
        ROSTFRITT STAL; ROSTFRI; STAL NIERDZEWNA; NIERDZEWNA; NIERDZEWNY; BLACHA NIERDZEWNA; 不锈钢; 不鏽鋼; 不锈钢板; ステンレス;
        ステンレス鋼; ステンレス鋼板; 300 SERIES; 300 SERIES STAINLESS; 300-SERIES SS; 400 SERIES; 400 SERIES STAINLESS`,
    ),
    candidates: STAINLESS_STEELS,
    families: RUSTLESS,
  },
  {
    words: split(
      `
        GI; G.I.; GALV; GALV.; GALVD; GALVANIZED; GALVANISED; GALVANIZE; GALVENIZED; GALVINIZED; HDG; HDGI;
        HDG STEEL; HOT DIP GALVANIZED; HOT DIPPED GALVANIZED; HOT DIP GALVANISED; HOT DIPPED GALVANISED;
        HOT DIP GALV; PG; PREGALV; PRE-GALV; PRE-GALVANIZED; PRE-GALVANISED; PREGALVANIZED; ZINC COATED;
        ZINC-COATED STEEL; Z2; Z3; FEUERVERZINKT; SENDZIMIRVERZINKT; SENDZIMIR; VERZINKT; VERZINKTES; GALVANISE;
        GALVANISEE; GALVANIZADO; GALVANIZADA; ZINCATO; ZINCATA; GALVANISEERD; GEGALVANISEERD; VERZINKTE;
        VERZINKT STAAL; FORZINKAD; VARMFORZINKAD; OCYNKOWANA; OCYNKOWANY; OCYNK; 镀锌; 镀锌板; 镀锌钢板; 鍍鋅; 鍍鋅鋼板; 亜鉛めっき鋼板;
        亜鉛メッキ鋼板; 亜鉛メッキ; 亜鉛めっき`,
    ),
    candidates: ['gi-cs', 'dx51d'],
    families: ['galvanized-steel'],
  },
  {
    words: ['SS'],
    candidates: [...STAINLESS_STEELS, ...PLAIN_STEELS, ...STRUCTURAL_STEELS],
    families: [...RUSTLESS, ...PLAIN],
    remark: 'SS stands for stainless steel and for structural steel',
  },
  {
    words: split(
      `
        ALUM; AL; ALU; ALY; ALUM.; ALUMINUM; ALUMINIUM; ALUMINUN; ALLUMINIUM; ALUMINIUN; ALM; B209; ASTM B209;
        ALUMINIUMBLECH; ALUBLECH; ALUMINIO; ALLUMINIO; LEICHTMETALL; ALUMINIUMPLAAT; ALUMINIUMPLAT;
        BLACHA ALUMINIOWA; ALUMINIOWA; ALUMINIOWY; GLIN; 铝; 铝板; 铝合金; 鋁; 鋁板; アルミ; アルミニウム; アルミ板; ALUMINUM ALLOY;
        ALUMINIUM ALLOY; AL ALLOY`,
    ),
    candidates: [
      '1100-h14',
      '3003-h14',
      '5052-h32',
      '5052-h34',
      '5754-h22',
      '6061-t4',
      '6061-t6',
      '6082-t6',
      '2024-t3',
      '7075-t6',
    ],
    families: ['aluminium'],
  },
  {
    words: split(
      'COPPER; COPER; CU; KUPFER; KUPFERBLECH; CUIVRE; COBRE; RAME; KOPER; KOPPAR; MIEDZ; MIEDZIANA; 铜; 紫铜; 銅; 铜板; 銅板; B152',
    ),
    candidates: ['c110-o', 'c110-h00', 'c110-h02', 'c110-h04', 'cu-r200', 'cu-r240', 'cu-r360'],
    families: ['copper'],
  },
  {
    words: split(
      'BRASS; BRAS; BRS; MESSING; MESSINGBLECH; LAITON; LATON; OTTONE; LATAO; MASSING; MOSIADZ; MOSIEZNA; 黄铜; 黃銅; 黄銅; 真鍮; B36',
    ),
    candidates: ['c260-o', 'c260-h01', 'c260-h02', 'c260-h04', 'cuzn30', 'cuzn37'],
    families: ['brass'],
  },
  {
    words: split('BRONZE; BRZ; BRONCE; BRONZO; BRONS; BRAZ; 青铜; 青銅; 磷铜; B103; BRONZEBLECH'),
    candidates: ['c510-o', 'c510-h02', 'c510-h04', 'c510-h06'],
    families: ['bronze'],
  },
  {
    words: split('TITANIUM; TI; TITAN; TITANE; TITANIO; TITAAN; TYTAN; 钛; 鈦; チタン; B265'),
    candidates: ['ti-gr1', 'ti-gr2'],
    families: ['titanium'],
  },
];

/** Alloys of plain steel that a word for galvanized sheet beside them turns into galvanized sheet. */
export const PLAIN_STEEL_ALLOYS: readonly string[] = [
  'crs',
  'dc01',
  'dc03',
  'dc04',
  'dc05',
  'dc06',
  'spcc',
  'spcd',
  'spce',
  'hrpo',
];
