import type { TextEncoding } from '../../src/core/model/raw.ts';

interface Language {
  readonly encoding: TextEncoding;
  readonly words: readonly string[];
}

function language(encoding: TextEncoding, words: string): Language {
  return { encoding, words: words.split(';') };
}

/** Words and cells of hardware lists with letters beyond ASCII, each with the encoding of its country. */
export const WORDS_BY_LANGUAGE: Readonly<Record<string, Language>> = {
  German: language(
    'windows-1252',
    'Stückzahl;Größe;Länge;Bohrung Ø 5,4 ±0,1;Oberfläche;Höhe;Maß;für;Blechstärke;Prüfung;Öse;größer als 2 mm²',
  ),
  French: language(
    'windows-1252',
    'Désignation;Quantité;Référence;épaisseur;perçage;écrou à sertir;tôle;pièce;été;matière première;l’écrou;coût unitaire;être',
  ),
  Spanish: language(
    'windows-1252',
    'descripción;tamaño;número de pieza;diámetro del agujero;¿cuál?;código de artículo;según plano',
  ),
  Italian: language('windows-1252', 'quantità;unità;è;però;così;più;qualità;perché'),
  Portuguese: language(
    'windows-1252',
    'descrição;número da peça;diâmetro do furo;observações;distância à borda;não;cabeça;função',
  ),
  Dutch: language('windows-1252', 'coëfficiënt;één;ruïne;geïsoleerd'),
  Swedish: language('windows-1252', 'plåttjocklek;längd;hål;anmärkning;kantavstånd;gänga;mässing;stål;på'),
  Danish: language('windows-1252', 'møtrik;hul ø5;længde;gevindstørrelse;rustfrit stål;før;ændring;højde'),
  English: language('windows-1252', 'façade;1/8” thick;5.6 – 5.7;90° bend;±0.1;M3×8;½ in;5 µm;Ø5.6;don’t;€ 2.30;naïve'),
  Polish: language(
    'windows-1250',
    'ilość;grubość blachy;długość;otwór;wykończenie;powłoka;materiał;średnica otworu;nakrętka;śruba;numer części;szerokość;ćwierć;są',
  ),
  Czech: language(
    'windows-1250',
    'počet kusů;množství;název;tloušťka;závit;délka;šířka;číslo dílu;šroub;průměr díry;rozměr;žlutý zinek',
  ),
  Hungarian: language('windows-1250', 'mennyiség;vastagság;furatátmérő;szélesség;felület;gyűrű;kötőelem;minőség'),
  Romanian: language('windows-1250', 'piuliţă;şurub;grosime tablă;bucăţi;oţel;gaură;observaţii'),
  Russian: language(
    'windows-1251',
    'количество;наименование;обозначение;толщина листа;отверстие;гайка М4;болт;шпилька;сталь;лист 08пс;БОЛТ;ГАЙКА;Ст3;в',
  ),
  Ukrainian: language('windows-1251', 'кількість;найменування;матеріал;товщина;отвір;гайка;довжина'),
  Japanese: language(
    'shift_jis',
    '部品番号;数量;板厚;材質;品名;備考;ナット;圧入ナット;表面処理;下穴径;ステンレス;鉄;ﾅｯﾄ;ｽﾀｯﾄﾞ;SUS304相当;①;位置決めピン;員数',
  ),
  Chinese: language(
    'gb18030',
    '零件号;数量;名称;规格;材料;厚度;备注;压铆螺母;螺柱;钢板;镀锌;孔径;不锈钢;铝板;左侧板;1套;12个;少量;若干;深圳;图号',
  ),
};
