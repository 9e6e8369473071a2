import type { Role } from '../model/list.ts';

/** One way of heading a column, as a pattern over the canonical words of `headingText`. Earlier patterns win. */
export interface HeadingPattern {
  /** Null: a heading that looks like a role's but is none ("qty per pack", "bend radius"). */
  readonly role: Role | null;
  /** Whether the words alone settle it; otherwise the cells below have a say and a surer column wins. */
  readonly sure: boolean;
  readonly pattern: RegExp;
}

const SHEET = '(?:sheet metal|base metal|sheet|panel|base|parent|host|substrate|plate|metal|work ?piece|blank)';
const FASTENER = '(?:clinch |press in |self clinching )?(?:fastener|nut|stud|standoff|insert|screw|bolt|pin|spacer)';
const MAKER = '(?:manufacturer|maker|supplier|vendor|distributor|seller)';
const EXTENT = '(?:minimum |maximum |nominal |actual |required |finished )?';

const sure = (role: Role | null, pattern: string): HeadingPattern => ({
  role,
  sure: true,
  pattern: new RegExp(pattern),
});
const maybe = (role: Role, pattern: string): HeadingPattern => ({ role, sure: false, pattern: new RegExp(pattern) });

/** English headings with the usual synonyms. Order matters: what a heading must not be taken for stands first. */
export const HEADING_PATTERNS: readonly HeadingPattern[] = [
  // Numbers that count packs, sales or stock, not fasteners per assembly.
  sure(
    'stock',
    '^(?:quantity |no |units )?(?:in |on )?(?:stock|hand|inventory)(?: quantity| level| on hand)?$|^(?:quantity )?availab(?:le|ility)$',
  ),
  sure(
    null,
    '^(?:quantity|units|items|pieces|no|unit|count) (?:per|in|of|each|/) (?:a )?(?:pack|package|packs|packs|box|bag|carton|reel|roll|lot)\\b',
  ),
  sure(
    null,
    '\\b(?:pack|package|box|bag|carton|reel|lot|moq|minimum order|order multiple|sold|spare|spares)\\b.*\\b(?:quantity|size|units|no|as)\\b',
  ),
  sure(
    null,
    '\\b(?:quantity|units|no|pieces)\\b.*\\b(?:sold|shipped|received|scrap|scrapped|spare|spares)\\b|^moq$|^minimum order',
  ),
  sure(
    null,
    '^ref(?:erence)? des|^(?:quantity|no|count) of holes?$|^hole (?:quantity|no|count|tolerance|depth|type|pattern|location|position|id|finish|note|ref)\\b|^(?:tap|clearance) ',
  ),
  sure(
    null,
    '^bend (?:radius|angle|allowance|deduction|relief|line|no|quantity|direction)|^edge (?:finish|treatment|radius|break|condition|type|quality|prep)',
  ),
  sure(
    null,
    '^thread (?:pitch|class|fit|direction|standard|engagement|length|depth)\\b|^(?:sheet|page|drawing|revision|panel) (?:no|size|quantity|count|width|height|length) (?:of|/)\\b|^sheet no$',
  ),
  sure(
    null,
    `^(?:coating|plating|paint|finish|flange|head|washer|powder|${FASTENER} head) (?:thickness|gauge)|^(?:length|width|diameter|gauge) code$`,
  ),

  sure(
    'price',
    '\\b(?:price|cost|msrp)\\b|^(?:sub ?total|total value|total amount|line total|ext(?:ended)?(?: value)?|value)$',
  ),
  maybe('price', '^total$'),
  maybe('partNumber', `^(?:no|code|reference) (?:of )?${MAKER}$`),
  sure('supplier', `^(?:source of materials?|where to buy|sourced from|purchased from|bought from)$`),
  sure(
    'supplier',
    `^(?:approved |preferred |primary |alternate )?(?:${MAKER}|source|brand|make|retailer|dealer)(?: name| code)?(?: / \\w+)?$`,
  ),

  sure(
    'panel',
    `^(?:panel|sheet metal|sheet|plate|base|host|enclosure|chassis) (?:part|part no|item|item no|no|name|id|part name|description|assembly|ref|reference|mark)$`,
  ),
  sure(
    'panel',
    '^panel$|^sheet metal part(?: no| name)?$|^(?:where used|where (?:fitted|installed)|(?:used|fitted|installed|mounted|pressed) (?:in|into|on|at)|goes (?:in|into|on)(?: panel)?|host)$',
  ),
  maybe(
    'panel',
    '^(?:(?:end |used on |top )?assembly(?: no| part no| name| id)?|installation (?:panel|location)|applies to)$',
  ),
  sure(
    'parent',
    '^(?:parent(?: part| item| assembly| folder| component)?(?: no| name| id| code)?|parent part no|(?:next )?higher (?:level )?assembly|next (?:higher )?assembly|nha|nhla|father|belongs to)$',
  ),
  maybe('parent', '^(?:sub assembly|sub system|subsystem)(?: no| part no| name)?$'),
  sure('level', '^(?:bom |structure |assembly |indent(?:ed|ure)? |hierarchy |tree )?(?:level|indent|depth)(?: no)?$'),

  sure(
    'fastenerMaterial',
    `^(?:${FASTENER}|body|part ?/ ?${FASTENER}) (?:material|alloy|metal)(?: type| specification| grade)?$`,
  ),
  sure('fastenerMaterial', `^(?:material|alloy) (?:of )?(?:the )?(?:${FASTENER})$`),

  sure(
    'material',
    `^(?:${SHEET} )*(?:material|alloy|metal) (?:/|and) (?:thickness|gauge)$|^(?:thickness|gauge) (?:/|and) (?:material|alloy|metal)$`,
  ),
  maybe(
    'thickness',
    `^(?:minimum|maximum) (?:${SHEET} |material )*(?:thickness|gauge)$|^(?:${SHEET} |material )+(?:thickness|gauge) (?:minimum|maximum)$`,
  ),
  sure(
    'thickness',
    `^${EXTENT}(?:${SHEET} |material |wall |stock )*(?:thickness|gauge)(?: (?:/ )?(?:thickness|gauge))?(?: nominal| actual| required)?$`,
  ),
  sure('thickness', `^(?:thickness|gauge) (?:of )?(?:the )?(?:${SHEET}|material)(?: material)?$|^t(?:hickness)? t$`),
  maybe('thickness', '^t$'),
  sure(
    'material',
    `^(?:${SHEET} )+(?:material|alloy|grade)(?: type| specification| grade| condition| temper| / temper)?$|^(?:material|alloy) (?:of |in )?(?:the )?${SHEET}$|^sheet (?:metal )?type$`,
  ),
  sure(
    'material',
    '^(?:raw )?(?:material|alloy)(?: type| specification| grade| condition| temper| (?:/|and) temper)?$|^(?:base|sheet) metal$|^metal(?: type)?$',
  ),
  maybe('description', '^material description$'),
  maybe('material', '^sheet$|^part material$|^material (?:/|and) |^stock material$'),

  sure(
    'edge',
    '^(?:hole |fastener )?(?:centre )?(?:to |from )?(?:nearest |closest |sheet |panel )?edge$|^centre (?:line )?to (?:sheet |panel |nearest )?edge',
  ),
  sure(
    'edge',
    '\\bedge (?:distance|margin|clearance)|\\bdistance (?:to |from |of )?(?:(?:nearest|sheet|panel|closest) )?edge|\\bto (?:sheet |panel |nearest )?edge\\b',
  ),
  sure(
    'spacing',
    '\\bcentre to centre\\b|\\bspacing\\b|^(?:hole|fastener) pitch|\\bdistance between\\b|^between (?:centre|hole|fastener)s?$',
  ),
  maybe('spacing', '^pitch$|^(?:hole|fastener|centre) (?:centre )?distance$'),
  sure(
    'bend',
    '^(?:nearest |closest )?bend$|\\b(?:to|from|of) (?:nearest |closest |the )?bend\\b|\\bbend (?:distance|clearance|line distance)',
  ),
  sure(
    'hole',
    `^${EXTENT}(?:mounting |panel |sheet |pilot |fastener |punched |drilled |installation |press in |clinch |recommended )*hole(?: in (?:sheet|panel))?(?: size| dia| dimension| size in (?:sheet|panel)| dia in (?:sheet|panel)| required)*$`,
  ),
  sure(
    'hole',
    '^dia (?:of )?hole$|^(?:drill|punch|drilled|punched)(?: size| dia| hole| hole size)*$|^size (?:of )?hole$',
  ),

  sure(
    'finish',
    `^(?:${SHEET} |${FASTENER} |surface |final |part |material |protective )*(?:finish|plating|coating|plated|surface treatment|treatment|surface|plate finish)(?: type| specification| colou?r| (?:/|and) (?:finish|plating|coating|colou?r))*$`,
  ),
  sure('finish', '^(?:decor|paint|powder coat|anodi[sz]e)$'),
  sure(
    'thread',
    `^(?:${FASTENER} |nominal )*thread(?: size| specification| dia| designation| type| form| callout)*$|^(?:screw|bolt|stud|nut|insert) size$`,
  ),
  maybe('thread', '^(?:fastener |nominal |basic )?size$|^thread(?: size)? (?:/|and|x) length$'),
  sure('length', `^(?:overall |nominal |total |${FASTENER} |shank )?(?:length|long)(?: l)?$`),
  maybe('length', '^l$'),

  maybe(
    'quantity',
    '^(?:total|order|ordered|buy|build|extended|ext|purchase) (?:quantity|required|units)(?: required)?$|^total no$|^quantity (?:ordered|to order|total|to buy|extended|ext)$',
  ),
  sure(
    'quantity',
    '^quantity(?: required| used| pieces| units| each| (?:per|in|of|for|on|/)(?: \\w+)*| per)?$|^(?:required|used|bom|part|fastener|item|component|unit|assembly) quantity$',
  ),
  sure(
    'quantity',
    '^(?:no|units|pieces|number) (?:required|off)(?: (?:in|per|for)(?: \\w+)*)?$|^no pieces$|^no of (?:copies|pieces|parts|fastener|items|units|off)$|^(?:pieces|items|units|parts|fastener) per \\w+$',
  ),
  sure('quantity', '^(?:pieces|quantity per assembly|each per assembly|per assembly|how many)$'),
  maybe('quantity', '^(?:units|amount|count|ea|each)$|^quantity\\b|\\bquantity$'),

  maybe(
    'partNumber',
    `^(?:internal |our |customer |company )?${MAKER} (?:part |article |item |product )?(?:no|id|part|sku|ref|reference|part code|article code|item no)$`,
  ),
  sure(
    'partNumber',
    `^(?:${FASTENER} |component |item |article |internal |our |customer |company |${MAKER} |catalog |cad |purchased |standard |inventory )*part (?:/ assembly )?(?:no|id|code|ident|identifier|reference|ref)(?: (?:/|or) .*)?$`,
  ),
  sure(
    'partNumber',
    `^(?:item|article|art|product|stock|catalog|material|ordering|order|component|inventory) (?:code|sku)$|^(?:article|art|product|catalog|stock|material|inventory|component|${MAKER}|ordering|${FASTENER}) no$|^sku$`,
  ),
  maybe(
    'partNumber',
    '^(?:item id|item|order|ordering|model|type|serial|reference|component|product|material|article) (?:no|id|reference)$(?<!^item no|^serial no|^reference no)',
  ),
  maybe(
    'partNumber',
    `^(?:part|article|reference|${FASTENER}(?: (?:type|id|code|reference))?|(?:internal|our|company|customer) (?:reference|no|code)|model|part (?:/|or) .*|code)$`,
  ),

  sure(
    'description',
    '^(?:part |item |component |fastener |product |short |long |detailed |bom |english |article )*(?:description|name|designation|nomenclature)(?: (?:/|or|of|1) ?.*)?$',
  ),
  sure(
    'description',
    '^(?:no )?component$|^(?:product|object|details?|item description|title|name of component|parts name)$',
  ),
  sure(
    'index',
    '^(?:position|index|find|balloon|bubble|callout|sequence|seq|row|line|line item|order)(?: no| id)?$|^item (?:/ )?(?:position|find)(?: no)?$|^(?:sr|sl|s|ser) no$|^find item$',
  ),
  maybe('index', '^(?:item(?: no)?|no|id|serial(?: no)?|ref(?:erence)? no|key)$'),
  sure(
    'note',
    '^(?:general |special |customer |engineering |additional |my |other )?(?:notes?(?: description)?|remarks?|comments?|obs|observations?|annotations?|instructions?)(?: (?:/|and|\\d) ?.*)?$',
  ),
  sure('unit', '^(?:(?:base |order )?units? of measure|unit of issue|measure unit|measuring unit|um|unit)$'),
  sure(
    'load',
    `^(?:(?:required|design|service|working|applied|axial|pull|rated|expected|max(?:imum)|minimum) )*(?:load|force)(?: required| case)?$|^(?:required |minimum )?(?:push|pull|torque) (?:out|through)(?: load| force| required)?$`,
  ),
];
