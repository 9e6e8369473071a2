import type { TextEncoding } from '../../src/core/model/raw.ts';
import type { CsvCase } from './csv-cases.ts';
import { encode } from './encode.ts';
import { utf8, utf16, western } from './make.ts';

type Grid = readonly (readonly string[])[];

/** A list in an encoding without mark, as a spreadsheet of that country saves it. */
function saved(trait: string, encoding: TextEncoding, cells: Grid, delimiter = ';'): CsvCase {
  const text = cells.map((row) => row.join(delimiter)).join('\r\n');
  return { trait, bytes: encode(`${text}\r\n`, encoding), cells, delimiter, encoding };
}

const GERMAN: Grid = [
  ['Teilenummer', 'Stückzahl', 'Werkstoff', 'Blechdicke', 'Bohrung'],
  ['MU-M4', '12', 'Stahl, verzinkt', '1,5', 'Ø 5,4'],
  ['BO-M5', '6', 'Alu für außen', '2,0', 'Ø 5,0 ±0,1'],
];
const JAPANESE: Grid = [
  ['部品番号', '品名', '数量', '板厚', '材質'],
  ['N-M4', '圧入ナット', '4', '1.6', 'SUS304相当'],
  ['S-M5', 'スタッド', '2', '1.2', '鉄'],
];
const CHINESE: Grid = [
  ['零件号', '名称', '数量', '厚度', '材料'],
  ['N-M4', '压铆螺母', '12个', '1.5', '冷轧钢板'],
  ['S-M5', '螺柱', '少量', '2', '铝板5052'],
];
const POLISH: Grid = [
  ['Numer części', 'Ilość', 'Materiał', 'Grubość', 'Uwagi'],
  ['N-M4', '4', 'stal nierdzewna', '1,5', 'wciskać przed malowaniem'],
  ['S-M5', '2', 'blacha żółta ocynkowana', '2', 'średnica otworu 5,4'],
];
const RUSSIAN: Grid = [
  ['Обозначение', 'Наименование', 'Количество', 'Толщина', 'Материал'],
  ['Г-М4', 'Гайка запрессовочная М4', '4', '1,5', 'сталь 08пс'],
  ['В-М5', 'ШПИЛЬКА', '2 шт', '2', 'АМг2'],
];

/** Text files of many countries: the encoding has to be found. None of them needs a word from the user unless it says so. */
export const ENCODING_CASES: readonly CsvCase[] = [
  saved('Windows-1252: German', 'windows-1252', GERMAN),
  saved('Windows-1252: French', 'windows-1252', [
    ['Désignation', 'Quantité', 'Matière', 'Épaisseur'],
    ['Écrou à sertir', '4', 'tôle d’acier', '1,5'],
    ['Goujon', '2', 'même pièce, côté intérieur', '2'],
  ]),
  saved('Windows-1252: Spanish', 'windows-1252', [
    ['Número de pieza', 'Descripción', 'Tamaño'],
    ['T-M4', 'tuerca de inserción', 'M4'],
    ['T-M5', 'según plano nº 3', 'M5'],
  ]),
  saved('Windows-1252: Italian', 'windows-1252', [
    ['Codice', 'Quantità', 'Finitura'],
    ['D-M4', '4', 'già zincato, più nichel'],
  ]),
  saved('Windows-1252: Portuguese', 'windows-1252', [
    ['Código', 'Descrição', 'Observações'],
    ['P-M4', 'porca de cravação', 'não pintar, dimensões em mm'],
  ]),
  saved('Windows-1252: Swedish', 'windows-1252', [
    ['Artikelnummer', 'Benämning', 'Plåttjocklek', 'Håldiameter'],
    ['M-M4', 'pressmutter av mässing', '1,5', 'ø5,4'],
  ]),
  saved('Windows-1252: Danish', 'windows-1252', [
    ['Varenr', 'Beskrivelse', 'Længde'],
    ['M-M4', 'rustfri møtrik, presses før maling', '10'],
  ]),
  saved(
    'Windows-1252: English with signs',
    'windows-1252',
    [
      ['Part', 'Hole', 'Note', 'Price'],
      ['N-4', 'Ø5.4 ±0.05', 'don’t paint – 90° bend', '€ 0.12'],
      ['N-6', '½ in', 'area 3 mm², 5 µm zinc', '£0.20'],
    ],
    '\t',
  ),
  saved('Windows-1250: Polish', 'windows-1250', POLISH),
  saved('Windows-1250: Czech', 'windows-1250', [
    ['Číslo dílu', 'Název', 'Počet', 'Tloušťka'],
    ['M-M4', 'matice lisovací, žlutý zinek', '4', '1,5'],
    ['S-M5', 'šroub, průměr díry', '2', '2'],
  ]),
  saved('Windows-1250: Hungarian', 'windows-1250', [
    ['Cikkszám', 'Megnevezés', 'Mennyiség', 'Vastagság'],
    ['A-M4', 'kötőelem, gyűrű', '4', '1,5'],
    ['A-M5', 'préselhető csap', '2', '2'],
  ]),
  saved('Windows-1250: Romanian', 'windows-1250', [
    ['Cod', 'Denumire', 'Bucăţi', 'Observaţii'],
    ['P-M4', 'piuliţă şi şurub', '4', 'oţel zincat'],
  ]),
  saved('Windows-1251: Russian', 'windows-1251', RUSSIAN),
  saved('Windows-1251: Ukrainian', 'windows-1251', [
    ['Позначення', 'Найменування', 'Кількість'],
    ['Г-М4', 'гайка запресована, їх отвір', '4'],
  ]),
  saved('Shift_JIS: Japanese', 'shift_jis', JAPANESE, ','),
  saved(
    'Shift_JIS: half-width kana and signs',
    'shift_jis',
    [
      ['品番', '品名', '備考'],
      ['①', 'ﾅｯﾄ M4', '例）左側'],
      ['②', 'ｽﾀｯﾄﾞ M5', '㎜単位'],
    ],
    ',',
  ),
  saved(
    'Shift_JIS: second bytes that look like a backslash, a bar or a letter',
    'shift_jis',
    [
      ['部品名', '表面処理', '数量'],
      ['ポスト', '三価クロメート（白）', '4'],
      ['ソケット', '能力表による', '2'],
    ],
    ',',
  ),
  saved('GB18030: Chinese', 'gb18030', CHINESE, ','),
  saved('GB18030: full-width commas', 'gb18030', CHINESE, '，'),
  {
    ...saved('GB18030: signs and a rare character of four bytes', 'gb18030', [
      ['名称', '规格', '备注'],
      ['压铆螺母', 'M4×8', '孔径±0.1'],
    ]),
    bytes: Uint8Array.from([
      ...encode('名称;规格;备注\r\n压铆螺母;M4×8;孔径±0.1', 'gb18030'),
      ...[0x81, 0x39, 0xee, 0x39],
    ]),
    cells: [
      ['名称', '规格', '备注'],
      ['压铆螺母', 'M4×8', '孔径±0.1㐀'],
    ],
  },
  {
    trait: 'one letter beyond ASCII after many rows without',
    bytes: western(`Part;Note\n${'N-4;flush\n'.repeat(9000)}N-6;façade`),
    cells: [['Part', 'Note'], ...Array.from({ length: 9000 }, () => ['N-4', 'flush']), ['N-6', 'façade']],
    delimiter: ';',
    encoding: 'windows-1252',
  },
  {
    trait: 'Windows-1252 or Windows-1250: too little text to be sure, and the user is told',
    bytes: encode('Part;Note\nN-4;nakrętka', 'windows-1250'),
    cells: [
      ['Part', 'Note'],
      ['N-4', 'nakrętka'],
    ],
    delimiter: ';',
    encoding: 'windows-1250',
    notices: [/^‘list\.csv’ is not UTF-8 and was read as Windows-1250 \(Central European\), which is a guess/],
  },
  {
    trait: 'an encoding of old that none of ours fits, and the user is told',
    bytes: Uint8Array.from([...utf8('Teil;Gr'), 0x94, 0xe1, ...utf8('e\nMutter;M4')]),
    cells: [
      ['Teil', 'Gr”áe'],
      ['Mutter', 'M4'],
    ],
    delimiter: ';',
    encoding: 'windows-1252',
    notices: [/which is a guess; if letters or signs look wrong, choose another encoding/],
  },
  {
    trait: 'UTF-8 with one damaged place stays UTF-8',
    bytes: Uint8Array.from([...utf8('Teil;Größe;Höhe;Länge\nMutter;'), 0xfc, ...utf8(';für außen;Öse\n')]),
    cells: [
      ['Teil', 'Größe', 'Höhe', 'Länge'],
      ['Mutter', '\ufffd', 'für außen', 'Öse'],
    ],
    delimiter: ';',
    notices: [/^Some characters of ‘list\.csv’ do not fit UTF-8/],
  },
  {
    trait: 'the user knows better',
    bytes: encode('Part;Note\nN-4;nakrętka', 'windows-1250'),
    cells: [
      ['Part', 'Note'],
      ['N-4', 'nakrêtka'],
    ],
    delimiter: ';',
    encoding: 'windows-1252',
    options: { encoding: 'windows-1252' },
  },
  {
    trait: 'the user chooses an encoding that does not fit',
    bytes: western('Part;Note\nN-4;Größe'),
    cells: [
      ['Part', 'Note'],
      ['N-4', 'Gr\ufffd\ufffde'],
    ],
    delimiter: ';',
    options: { encoding: 'utf-8' },
    notices: [/do not fit UTF-8/],
  },
  saved('UTF-16 little endian without mark: German', 'utf-16le', GERMAN),
  saved('UTF-16 big endian without mark: German', 'utf-16be', GERMAN),
  saved('UTF-16 little endian without mark: Japanese', 'utf-16le', JAPANESE, '\t'),
  saved('UTF-16 big endian without mark: Chinese', 'utf-16be', CHINESE, '\t'),
  saved('UTF-16 little endian without mark: Russian', 'utf-16le', RUSSIAN, '\t'),
  {
    trait: 'UTF-16 with half a character at the end',
    bytes: Uint8Array.from([...utf16('\ufeffPart,Qty\nNut,4', 'le'), 0x35]),
    cells: [
      ['Part', 'Qty'],
      ['Nut', '4\ufffd'],
    ],
    encoding: 'utf-16le',
    notices: [/do not fit UTF-16/],
  },
];
