package sarif

// The parts of SARIF 2.1.0 (OASIS Standard, with errata 01) that are written.
// Names are those of the standard; what has the value that the standard takes for
// absent is left out.

type document struct {
	Schema  string `json:"$schema"`
	Version string `json:"version"`
	Runs    []run  `json:"runs"`
}

type run struct {
	Tool               tool                `json:"tool"`
	Language           string              `json:"language"`
	Invocations        []invocation        `json:"invocations"`
	OriginalURIBaseIDs map[string]artifact `json:"originalUriBaseIds"`
	Artifacts          []artifactEntry     `json:"artifacts"`
	ColumnKind         string              `json:"columnKind"`
	Taxonomies         []component         `json:"taxonomies,omitempty"`
	Results            []result            `json:"results"` // empty, never absent: the rules ran
}

type tool struct {
	Driver component `json:"driver"`
}

// component is the program with its rules, or a standard with its clauses.
type component struct {
	Name                string          `json:"name"`
	Version             string          `json:"version,omitempty"`
	ShortDescription    *text           `json:"shortDescription,omitempty"`
	FullDescription     *text           `json:"fullDescription,omitempty"`
	Language            string          `json:"language,omitempty"`
	Rules               []descriptor    `json:"rules,omitempty"`
	Notifications       []descriptor    `json:"notifications,omitempty"`
	Taxa                []descriptor    `json:"taxa,omitempty"`
	SupportedTaxonomies []componentLink `json:"supportedTaxonomies,omitempty"`
}

type componentLink struct {
	Name  string `json:"name"`
	Index int    `json:"index"`
}

// descriptor tells of a rule, a kind of notification or a clause.
type descriptor struct {
	ID                   string         `json:"id"`
	DeprecatedIDs        []string       `json:"deprecatedIds,omitempty"`
	ShortDescription     *text          `json:"shortDescription,omitempty"`
	FullDescription      *text          `json:"fullDescription,omitempty"`
	DefaultConfiguration *configuration `json:"defaultConfiguration,omitempty"`
	Help                 *text          `json:"help,omitempty"`
	Relationships        []relationship `json:"relationships,omitempty"`
	Properties           map[string]any `json:"properties,omitempty"`
}

type configuration struct {
	Enabled    *bool          `json:"enabled,omitempty"`
	Level      string         `json:"level,omitempty"`
	Parameters map[string]any `json:"parameters,omitempty"`
}

type relationship struct {
	Target      descriptorLink `json:"target"`
	Kinds       []string       `json:"kinds"`
	Description *text          `json:"description,omitempty"`
}

type descriptorLink struct {
	ID            string         `json:"id"`
	Index         int            `json:"index"`
	ToolComponent *componentLink `json:"toolComponent,omitempty"`
}

type invocation struct {
	ExecutionSuccessful        bool           `json:"executionSuccessful"`
	ExitCode                   int            `json:"exitCode"`
	ExitCodeDescription        string         `json:"exitCodeDescription"`
	ToolExecutionNotifications []notification `json:"toolExecutionNotifications,omitempty"`
	ToolConfigurationNotes     []notification `json:"toolConfigurationNotifications,omitempty"`
}

type notification struct {
	Descriptor     descriptorLink  `json:"descriptor"`
	AssociatedRule *descriptorLink `json:"associatedRule,omitempty"`
	Level          string          `json:"level"`
	Message        text            `json:"message"`
	Locations      []location      `json:"locations,omitempty"`
}

type result struct {
	RuleID              string            `json:"ruleId"`
	RuleIndex           int               `json:"ruleIndex"`
	Kind                string            `json:"kind"`
	Level               string            `json:"level"`
	Message             text              `json:"message"`
	AnalysisTarget      *artifact         `json:"analysisTarget,omitempty"`
	Locations           []location        `json:"locations"`
	RelatedLocations    []location        `json:"relatedLocations,omitempty"`
	Fingerprints        map[string]string `json:"fingerprints,omitempty"`
	PartialFingerprints map[string]string `json:"partialFingerprints,omitempty"`
	Suppressions        []suppression     `json:"suppressions,omitzero"`
	Properties          map[string]any    `json:"properties,omitempty"`
}

// text is a message, or one that has a form in Markdown too.
type text struct {
	Text     string `json:"text"`
	Markdown string `json:"markdown,omitempty"`
}

type location struct {
	PhysicalLocation physical  `json:"physicalLocation"`
	LogicalLocations []logical `json:"logicalLocations,omitempty"`
	Message          *text     `json:"message,omitempty"`
}

type physical struct {
	ArtifactLocation artifact `json:"artifactLocation"`
	Region           *region  `json:"region,omitempty"`
}

type logical struct {
	FullyQualifiedName string `json:"fullyQualifiedName"`
}

type artifact struct {
	URI         string `json:"uri,omitempty"`
	URIBaseID   string `json:"uriBaseId,omitempty"`
	Description *text  `json:"description,omitempty"`
}

type artifactEntry struct {
	Location artifact `json:"location"`
	Roles    []string `json:"roles"`
}

// region counts lines and columns from one; EndColumn is just after the last
// character, and the end of the line where it is absent.
type region struct {
	StartLine   int `json:"startLine"`
	StartColumn int `json:"startColumn,omitempty"`
	EndLine     int `json:"endLine,omitempty"`
	EndColumn   int `json:"endColumn,omitempty"`
}

// figure is a number kept beside the message, so that it is no part of what a
// finding is known by.
type figure struct {
	Field string   `json:"field"`
	Value *float64 `json:"value,omitempty"`
	Text  string   `json:"text"`
}
