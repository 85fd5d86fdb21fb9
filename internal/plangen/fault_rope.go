package plangen

import (
	"fmt"
	"strings"
)

// put makes a mistake of one field that is set otherwise, or added. The report
// points at what the field belongs to.
func put(what, rule string, of func(*plot) *entry, field func(*plot) *entry, suits ...func(*sketch) bool) mistake {
	return mistake{what: what, rule: rule, suits: all(suits...), sow: func(p *plot) *entry {
		of(p).set(field(p))
		return pointed(of(p))
	}}
}

// warns is a mistake that ends in a warning.
func warns(m mistake) mistake {
	m.severity = "warning"
	return m
}

func word(key, text string) func(*plot) *entry {
	return func(*plot) *entry { return val(key, text) }
}

// sized sets a field to a size that follows from the lift.
func sized(key string, sizeM func(*plot) float64) func(*plot) *entry {
	return func(p *plot) *entry { return val(key, p.part(p.grain(sizeM(p)))) }
}

func sling(p *plot) *entry { return p.item("S1") }

func upper(p *plot) *entry { return p.item("S1").at("eyes", "upper") }

func lower(p *plot) *entry { return p.item("S1").at("eyes", "lower") }

func fiber(s *sketch) bool { return s.made.core == "fiber" }

// ropeMistakes are slings that are not fit for use, or not what their tags say.
func ropeMistakes() []mistake {
	rope := func(what, rule string, of func(*plot) *entry, field func(*plot) *entry, suits ...func(*sketch) bool) mistake {
		m := put(what, rule, of, field, suits...)
		sow := m.sow
		m.sow = func(p *plot) *entry {
			sow(p)
			return p.item("S1").at("id")
		}
		return m
	}
	tag := func(p *plot) *entry { return p.tagged().at("tag") }
	return []mistake{
		{what: "a kink", rule: "sling/faults_seen", sow: func(p *plot) *entry {
			sling(p).set(listOf("faults_seen", val("", "kink")))
			return sling(p).at("faults_seen")
		}},
		rope("rope that does not turn", "sling/rotation_resistant_or_lang", sling, word("class", "19x7")),
		rope("rope of lang lay", "sling/rotation_resistant_or_lang", sling, word("lay", "right_lang")),
		rope("an eye held by clips", "sling/eye_not_allowed", upper, word("kind", "clipped")),
		rope("splices that meet", "sling/body_too_short", upper, func(p *plot) *entry { return val("splice_length", p.length(p.slingM(0))) }),
		rope("a hot fiber core", "sling/temperature", (*plot).lift, func(*plot) *entry {
			return mapOf("temperature", val("lowest", "10 C"), val("highest", "95 C"))
		}, fiber),
		put("a thimble for thicker rope", "fit/thimble_size", lower, sized("thimble_size", func(p *plot) float64 { return 1.3 * p.d() })),
		put("a tag beyond the strength of its rope", "tag/rating_over_rope", tag, func(p *plot) *entry {
			return val("rated_load", plain(p.rope.ratedT*1.6)+" t")
		}, loose, tabled),
		put("a tag of too low a design factor", "tag/design_factor_low", tag, func(*plot) *entry { return bare("design_factor", "4") }),
		warns(mistake{what: "slings of unlike core", rule: "sling/legs_unlike", suits: all(legs(2, 3), fiber), sow: func(p *plot) *entry {
			p.item("S2").set(val("core", "iwrc"))
			return pointed(p.item("S2"))
		}}),
	}
}

// tabled says that the strength of such rope is known.
func tabled(s *sketch) bool { return s.rope.diameterMM >= 10 && s.rope.diameterMM < 26 }

// bridleMistakes are parts of a bridle that do not suit each other.
func bridleMistakes() []mistake {
	bridle := func(p *plot) *entry { return p.item("B1") }
	of := func(what, rule string, id string, field func(*plot) *entry, suits ...func(*sketch) bool) mistake {
		m := put(what, rule, func(p *plot) *entry { return p.item(id) }, field, append(suits, bridled)...)
		sow := m.sow
		m.sow = func(p *plot) *entry {
			sow(p)
			if strings.HasSuffix(rule, "_weak") {
				return p.item(id).at("id")
			}
			return bridle(p).at("id")
		}
		return m
	}
	rated := func(t func(*plot) float64) func(*plot) *entry {
		return func(p *plot) *entry { return val("rated_load", plain(t(p))+" t") }
	}
	return []mistake{
		of("legs across from each other on one link", "bridle/diagonal_pairs", "B1", func(p *plot) *entry {
			for i := range p.points {
				p.leg(i).drop("angle_from_horizontal") // they hang flatter from such links
			}
			pair := func(link, a, b string) *entry {
				return mapOf("", val("link", link), listOf("legs", val("", a), val("", b)))
			}
			return listOf("groups", pair("IL1", "S1", "S3"), pair("IL2", "S2", "S4"))
		}, legs(4, 4)),
		of("an intermediate link as strong as one leg", "bridle/intermediate_link_weak", "IL1", rated(func(p *plot) float64 { return 1.5 * p.rope.ratedT }), legs(3, 4)),
		of("a master link weaker than the bridle", "bridle/master_link_weak", "ML1", rated(func(p *plot) float64 { return 0.97 * p.assemblyT() })),
		of("a lower fitting weaker than its leg", "bridle/lower_fitting_weak", "K1", rated(func(p *plot) float64 { return 0.95 * p.rope.ratedT }), shackled),
		{what: "a tag for another number of legs", rule: "bridle/legs_on_tag", suits: bridled, sow: func(p *plot) *entry {
			bridle(p).at("tag").set(bare("legs", fmt.Sprint(1+len(p.points)%4)))
			return bridle(p).at("id")
		}},
		warns(of("a leg longer than its match", "bridle/legs_unmatched", "S1", func(p *plot) *entry {
			return val("length", p.length(p.snap(p.slingM(0)+2*p.d())))
		}, legs(2, 2), thin)),
	}
}

// thin says that twice the rope's diameter moves the load by little.
func thin(s *sketch) bool { return s.rope.diameterMM < 20 }
