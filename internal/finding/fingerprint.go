package finding

import (
	"crypto/sha256"
	"encoding/hex"
	"strconv"
)

// WholeFile is the key of a finding whose subject is the file: many such findings
// of one check can stand in one file.
const WholeFile = "file"

// Fingerprint tells a finding apart from all others, and knows it again in the
// next revision of its plan: it goes by the file, the rule and the subject, and
// not by lines, figures or units. n counts the findings of one rule on one
// subject, from zero. The form is 32 hexadecimal digits of SHA-256.
func Fingerprint(file, rule, subject string, n int) string {
	h := sha256.New()
	for _, part := range []string{file, rule, subject, strconv.Itoa(n)} {
		h.Write([]byte(strconv.Itoa(len(part)) + ":" + part)) // lengths, so that parts can't run into each other
	}
	return hex.EncodeToString(h.Sum(nil))[:32]
}

// Identity is what a finding goes by within its plan, given the stable key of
// its subject. Where the subject is the whole file, the message tells its
// findings apart: it names the key or the value at fault.
func (f Finding) Identity(key string) string {
	if key == WholeFile {
		return key + ": " + f.Message
	}
	return key
}
